package handwheel.reader;

import handwheel.casualty.Casualty;
import handwheel.ship.Ship;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** The ship and the script that come with the program, read without the program's own folders. */
public final class ShippedFiles {
  /** The script's text. */
  public static final byte[] STEAM_LEAK = bytes(Path.of("drills/steam-leak.yaml"));

  private static final Path SHIP = Path.of("drills/ships/alder-reach");

  private ShippedFiles() {}

  /**
   * Reads the ship.
   *
   * @return the ship with what was found
   */
  public static Read<Ship> ship() {
    return ShipReader.read(files());
  }

  /**
   * Reads the steam leak.
   *
   * @return the script
   */
  public static Casualty steamLeak() {
    return ScriptReader.read("steam-leak.yaml", STEAM_LEAK, ship().value().orElseThrow())
        .value()
        .orElseThrow();
  }

  static ShipFiles files() {
    return name ->
        Files.exists(SHIP.resolve(name))
            ? Optional.of(bytes(SHIP.resolve(name)))
            : Optional.empty();
  }

  static byte[] bytes(Path file) {
    try {
      return Files.readAllBytes(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
