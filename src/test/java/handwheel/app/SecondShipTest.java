package handwheel.app;

import static org.assertj.core.api.Assertions.assertThat;

import handwheel.casualty.Casualty;
import handwheel.drill.Mode;
import handwheel.drill.Rehearsal;
import handwheel.logbook.Entry;
import handwheel.proof.WitnessPlayer;
import handwheel.reader.Read;
import handwheel.reader.ScriptReader;
import handwheel.reader.ShipReader;
import handwheel.scoring.ScoreSheet;
import handwheel.scoring.Scorer;
import handwheel.ship.Ship;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Another ship of the same design is data: the same casualty is drilled on her. */
class SecondShipTest {
  private static final Path FOLDER = Path.of("drills", "ships", "fennel-rock");
  private static final Path SCRIPT = Path.of("src/test/resources/scripts/other/fennel-rock.yaml");

  private static byte[] bytes(Path file) {
    try {
      return Files.readAllBytes(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Ship ship() {
    Read<Ship> read =
        ShipReader.read(
            name ->
                Files.exists(FOLDER.resolve(name))
                    ? Optional.of(bytes(FOLDER.resolve(name)))
                    : Optional.empty());
    assertThat(read.findings()).isEmpty();
    return read.value().orElseThrow();
  }

  @Test
  void theSameCasualtyIsDrilledOnHer() {
    Ship ship = ship();
    Read<Casualty> read = ScriptReader.read("other-ship.yaml", bytes(SCRIPT), ship);
    assertThat(read.findings()).isEmpty();
    Casualty casualty = read.value().orElseThrow();
    for (long seed = 1; seed <= 20; seed++) {
      List<Entry> entries =
          Rehearsal.play(
              new Rehearsal.Setup(ship, casualty, seed, Mode.PRACTICE),
              new WitnessPlayer(casualty, ship),
              e -> {},
              s -> {});
      ScoreSheet sheet = Scorer.score(casualty, ship, entries);
      assertThat(sheet.charges()).as("seed %d", seed).isEmpty();
    }
  }
}
