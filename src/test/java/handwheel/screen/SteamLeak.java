package handwheel.screen;

import handwheel.debrief.Scripts;
import handwheel.drill.Mode;
import handwheel.logbook.EntrySink;
import handwheel.reader.Read;
import handwheel.reader.ScriptReader;
import handwheel.reader.ShipReader;
import handwheel.ship.Ship;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** The shipped steam leak, for tests of the faces. */
public final class SteamLeak {
  /** Its ship and script. */
  public static final Scripts.Found FOUND = load();

  private SteamLeak() {}

  /** Returns what a drill is made from. */
  public static Script script(EntrySink record) {
    return new Script(FOUND, 1, Mode.PRACTICE, record);
  }

  static Expander expander() {
    return new Expander(FOUND.ship(), FOUND.casualty().messages());
  }

  static Ground ground() {
    return new Ground(
        new Pages(script(e -> {}), expander()), expander(), new Hazards(FOUND.casualty()));
  }

  private static Scripts.Found load() {
    Path file = Path.of("drills/steam-leak.yaml");
    Read<Ship> ship = ShipReader.read(SteamLeak::shipFile);
    Ship read = ship.value().orElseThrow();
    return new Scripts.Found(
        read, ScriptReader.read(file.toString(), bytes(file), read).value().orElseThrow());
  }

  private static Optional<byte[]> shipFile(String name) {
    Path file = Path.of("drills/ships/alder-reach").resolve(name);
    return Files.isRegularFile(file) ? Optional.of(bytes(file)) : Optional.empty();
  }

  private static byte[] bytes(Path file) {
    try {
      return Files.readAllBytes(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
