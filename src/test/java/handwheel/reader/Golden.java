package handwheel.reader;

import static org.assertj.core.api.Assertions.assertThat;

import handwheel.diagnostics.Finding;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Compares findings with a file that was looked through by a person. {@code -Dgolden.update=true}
 * writes the file anew; what changed is to be looked through again.
 */
final class Golden {
  static final String END = ".findings";

  private Golden() {}

  static void check(Path file, List<Finding> findings) {
    String text = findings.stream().map(f -> f.text() + "\n").collect(Collectors.joining());
    if (Boolean.getBoolean("golden.update")) {
      write(file, text);
    }
    assertThat(file).exists();
    assertThat(text).isEqualTo(TestFiles.text(file));
  }

  private static void write(Path file, String text) {
    try {
      Files.createDirectories(file.getParent());
      Files.writeString(file, text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
