package handwheel.reader;

import static org.assertj.core.api.Assertions.assertThat;

import handwheel.casualty.Casualty;
import handwheel.ship.Ship;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Scripts with the mistakes people make, and all that is found in each. */
final class BadScriptsTest {
  private static final Ship SHIP = TestFiles.smallShip();

  static List<Path> scripts() {
    return TestFiles.files(TestFiles.BAD, ".yaml");
  }

  @ParameterizedTest
  @MethodSource("scripts")
  void allIsFoundAtOnce(Path script) {
    String name = script.getFileName().toString();
    Read<Casualty> read = ScriptReader.read(name, TestFiles.bytes(script), SHIP);

    assertThat(read.findings()).isNotEmpty();
    Golden.check(script.resolveSibling(name.replace(".yaml", Golden.END)), read.findings());
  }

  @Test
  void theScriptTheyWereMadeFromIsGood() {
    Path good = TestFiles.GOOD.resolve("small.yaml");

    Read<Casualty> read = ScriptReader.read("small.yaml", TestFiles.bytes(good), SHIP);

    assertThat(read.findings()).isEmpty();
    assertThat(read.value()).isPresent();
  }

  @Test
  void noFindingsAreKeptWithoutTheirScript() {
    List<String> scripts =
        scripts().stream().map(f -> f.toString().replace(".yaml", Golden.END)).toList();
    List<String> findings =
        TestFiles.files(TestFiles.BAD, Golden.END).stream().map(Path::toString).toList();

    assertThat(findings).containsExactlyInAnyOrderElementsOf(scripts);
  }
}
