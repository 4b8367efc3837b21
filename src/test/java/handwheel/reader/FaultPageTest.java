package handwheel.reader;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The page on faults tells of every fault and of every key it has. */
class FaultPageTest {
  private static final String PAGE = TestFiles.text(Path.of("docs/scripts/faults.md"));

  @ParameterizedTest
  @MethodSource("handwheel.reader.ScriptReader#faultWords")
  void tellsOfTheFault(String word) {
    String row =
        PAGE.lines().filter(l -> l.startsWith("| `" + word + "` |")).findFirst().orElse("");
    Shape shape = FaultReader.SHAPES.getOrDefault(word, Shape.of("none"));
    assertThat(shape.names().stream().filter(FaultPageTest::isOwn))
        .as(word)
        .allSatisfy(key -> assertThat(row).contains("`" + key + "`"));
    assertThat(row).isNotEmpty();
  }

  private static boolean isOwn(String key) {
    return !key.matches("fault|id|after|ramp|for");
  }
}
