package handwheel.drill;

import handwheel.casualty.Casualty;
import handwheel.reader.Read;
import handwheel.reader.ScriptReader;
import handwheel.reader.ShipReader;
import handwheel.ship.Ship;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** The examples of the script language's pages. */
final class ExampleScripts {
  static final Ship SHIP = ship();
  private static final Path FOLDER = Path.of("docs/scripts/examples");

  private ExampleScripts() {}

  static Casualty read(String name) {
    Path file = FOLDER.resolve(name + ".yaml");
    Read<Casualty> read = ScriptReader.read(file.toString(), bytes(file), SHIP);
    return read.value().orElseThrow(() -> new AssertionError(read.findings().toString()));
  }

  private static Ship ship() {
    Path folder = Path.of("drills/ships/alder-reach");
    return ShipReader.read(
            name ->
                Files.exists(folder.resolve(name))
                    ? Optional.of(bytes(folder.resolve(name)))
                    : Optional.empty())
        .value()
        .orElseThrow();
  }

  private static byte[] bytes(Path file) {
    try {
      return Files.readAllBytes(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
