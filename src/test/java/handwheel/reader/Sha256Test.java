package handwheel.reader;

import static org.assertj.core.api.Assertions.assertThat;

import handwheel.ship.Ship;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Hashes, against published examples. */
final class Sha256Test {
  /** Example of FIPS 180-4 (NIST, SHA-256 examples): the three letters abc. */
  private static final String ABC =
      "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";

  @Test
  void hashOfAScriptIsThatOfItsBytes() {
    assertThat(Sha256.of("abc".getBytes(StandardCharsets.US_ASCII))).isEqualTo(ABC);
  }

  @Test
  void hashOfFilesIsThatOfLengthsNamesAndContents() {
    TreeMap<String, byte[]> files = new TreeMap<>();
    files.put("b", new byte[] {1, 2});
    files.put("a", new byte[] {3});
    byte[] written = {0, 0, 0, 1, 'a', 0, 0, 0, 1, 3, 0, 0, 0, 1, 'b', 0, 0, 0, 2, 1, 2};

    assertThat(Sha256.of(files)).isEqualTo(Sha256.of(written));
  }

  @Test
  void everyFileOfAShipCounts() {
    String usual = TestFiles.smallShip().sha256();
    ShipFiles good = TestFiles.folder(TestFiles.SMALL_SHIP);
    for (String changed : new String[] {"ship.yaml", "plant.yaml", "steaming.yaml"}) {
      Read<Ship> read =
          ShipReader.read(
              name -> good.read(name).map(b -> name.equals(changed) ? withComment(b) : b),
              TestFiles.states());

      assertThat(read.value().map(Ship::sha256)).isPresent().isNotEqualTo(Optional.of(usual));
    }
  }

  private static byte[] withComment(byte[] bytes) {
    return TestFiles.bytes(new String(bytes, StandardCharsets.UTF_8) + "# more\n");
  }
}
