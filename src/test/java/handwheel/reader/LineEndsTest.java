package handwheel.reader;

import static org.assertj.core.api.Assertions.assertThat;

import handwheel.casualty.Casualty;
import handwheel.diagnostics.Finding;
import handwheel.ship.Ship;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A file says the same whatever ends its lines (YAML 1.2.2 section 5.4: line feed, carriage return,
 * or both) and whether a byte order mark (section 5.2) stands before it.
 */
final class LineEndsTest {
  private static final Ship SHIP = TestFiles.smallShip();
  private static final List<Path> SCRIPTS = TestFiles.files(TestFiles.BAD, ".yaml");

  @ParameterizedTest
  @ValueSource(strings = {"\r\n", "\r"})
  void goodScriptIsTheSame(String end) {
    Path good = TestFiles.GOOD.resolve("small.yaml");
    String text = TestFiles.text(good);

    Casualty usual = read(text).value().orElseThrow();
    Casualty other = read("\uFEFF" + text.replace("\n", end)).value().orElseThrow();

    assertThat(other)
        .usingRecursiveComparison()
        .ignoringFields("sha256")
        .withStrictTypeChecking()
        .isEqualTo(usual);
  }

  @ParameterizedTest
  @ValueSource(strings = {"\r\n", "\r"})
  void badScriptsHaveTheSameFindings(String end) {
    for (Path script : SCRIPTS) {
      String text = TestFiles.text(script);
      List<Finding> usual = read(text).findings();

      assertThat(read("\uFEFF" + text.replace("\n", end)).findings())
          .as(script.toString())
          .isEqualTo(usual);
    }
  }

  private static Read<Casualty> read(String text) {
    return ScriptReader.read("a.yaml", TestFiles.bytes(text), SHIP);
  }
}
