package handwheel.plant;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Compares a page of figures under docs/plant with what the plant does now. {@code
 * -Dgolden.update=true} writes it anew; what changed is to be read by a person.
 */
public final class GoldenPage {
  private GoldenPage() {}

  /** Compares a page, named without folder and ending. */
  public static void check(String name, String text) {
    Path file = Path.of("docs", "plant", name + ".md");
    try {
      if (Boolean.getBoolean("golden.update")) {
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
      }
      assertThat(text).isEqualTo(Files.readString(file));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
