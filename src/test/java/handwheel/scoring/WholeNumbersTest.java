package handwheel.scoring;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Property 8 of a fair scorer: whole numbers only. */
final class WholeNumbersTest {
  private static final Pattern FLOATING = Pattern.compile("\\b(double|float|Double|Float)\\b");

  @Test
  void noFloatingPointFigureIsDeclaredInScoring() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("src/main/java/handwheel/scoring"))) {
      List<String> sources = files.map(WholeNumbersTest::text).toList();
      assertThat(sources).hasSizeGreaterThan(30).noneMatch(s -> FLOATING.matcher(s).find());
    }
  }

  private static String text(Path file) {
    try {
      return Files.readString(file, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
