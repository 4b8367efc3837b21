package handwheel.reader;

import static org.assertj.core.api.Assertions.assertThat;

import handwheel.casualty.Casualty;
import handwheel.ship.Ship;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is shipped reads without a finding. */
final class ShippedFilesTest {
  static List<Path> scripts() {
    return TestFiles.files(TestFiles.DRILLS, ".yaml");
  }

  @Test
  void shipReadsWithoutAFinding() {
    Read<Ship> read = ShipReader.read(TestFiles.folder(TestFiles.ALDER_REACH));

    assertThat(read.findings()).isEmpty();
    assertThat(read.value()).isPresent();
  }

  /** The same with the names of states from the plant's own tests. */
  @Test
  void conditionsNameEveryState() {
    Read<Ship> read = ShipReader.read(TestFiles.folder(TestFiles.ALDER_REACH), TestFiles.states());

    assertThat(read.findings()).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("scripts")
  void scriptReadsWithoutAFinding(Path script) {
    Read<Casualty> read =
        ScriptReader.read(script.toString(), TestFiles.bytes(script), TestFiles.alderReach());

    assertThat(read.findings()).isEmpty();
    assertThat(read.value()).isPresent();
  }
}
