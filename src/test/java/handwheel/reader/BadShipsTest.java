package handwheel.reader;

import static org.assertj.core.api.Assertions.assertThat;

import handwheel.ship.Ship;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Ship files with mistakes. A folder holds only the file with the mistake. */
final class BadShipsTest {
  static List<Path> folders() throws IOException {
    try (Stream<Path> files = Files.list(TestFiles.BAD_SHIPS)) {
      return files.filter(Files::isDirectory).sorted().toList();
    }
  }

  @ParameterizedTest
  @MethodSource("folders")
  void allIsFoundAtOnce(Path folder) {
    ShipFiles bad = TestFiles.folder(folder);
    ShipFiles good = TestFiles.folder(TestFiles.SMALL_SHIP);
    Read<Ship> read =
        ShipReader.read(name -> bad.read(name).or(() -> good.read(name)), TestFiles.states());

    assertThat(read.findings()).isNotEmpty();
    Golden.check(folder.resolveSibling(folder.getFileName() + Golden.END), read.findings());
  }

  @Test
  void theShipTheyWereMadeFromIsGood() {
    Read<Ship> read = ShipReader.read(TestFiles.folder(TestFiles.SMALL_SHIP), TestFiles.states());

    assertThat(read.findings()).isEmpty();
    assertThat(read.value()).isPresent();
  }

  @Test
  void noFindingsAreKeptWithoutTheirFolder() throws IOException {
    List<String> folders = folders().stream().map(f -> f + Golden.END).toList();
    List<String> findings =
        TestFiles.files(TestFiles.BAD_SHIPS, Golden.END).stream().map(Path::toString).toList();

    assertThat(findings).containsExactlyInAnyOrderElementsOf(folders);
  }

  @Test
  void aFolderWithoutAShipIsSaidSo() {
    Read<Ship> read = ShipReader.read(name -> java.util.Optional.empty());

    assertThat(read.value()).isEmpty();
    assertThat(read.findings())
        .extracting(f -> f.text())
        .containsExactly(
            "ship.yaml: error: there is no file `ship.yaml` [ship.missing-file]\n"
                + "    Put the file into the ship's folder.");
  }
}
