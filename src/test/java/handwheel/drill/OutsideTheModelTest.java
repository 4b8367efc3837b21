package handwheel.drill;

import static org.assertj.core.api.Assertions.assertThat;

import handwheel.casualty.Casualty;
import handwheel.debrief.Scripts;
import handwheel.debrief.Sentences;
import handwheel.logbook.Entry;
import handwheel.plant.Plant;
import handwheel.plant.Starts;
import handwheel.proof.WitnessPlayer;
import handwheel.reader.ShippedFiles;
import handwheel.ship.Ship;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A run that leaves the range of the equations is stamped, once for each figure. */
class OutsideTheModelTest {
  private static final Ship SHIP = ShippedFiles.ship().value().orElseThrow();

  @Test
  void theRunIsStampedOnceAndTheDebriefTellsIt() {
    List<Entry> entries = new ArrayList<>();
    Plant plant = Starts.plant("50");
    plant.walk((name, x) -> name.equals("bilge.volume") ? 80 : x);
    Scene scene = new Scene(SHIP, plant, entries::add);
    PlantLog log = new PlantLog(scene);
    for (scene.now = 0; scene.now < 10; scene.now++) {
      plant.evaluate();
      plant.applyRules(log);
      plant.advance();
    }
    assertThat(entries)
        .containsExactly(
            new Entry.PlantEvent(
                0, "outside the model: bilge depth 3.50 ft, its equations hold below 3.28 ft"));
    Sentences words = new Sentences(new Scripts.Found(SHIP, ShippedFiles.steamLeak()));
    assertThat(words.told(entries.get(0)))
        .contains(
            "Plant: outside the model: bilge depth 3.50 ft, its equations hold below 3.28 ft.");
  }

  @Test
  void theWitnessOfTheSteamLeakStaysInside() {
    Casualty casualty = ShippedFiles.steamLeak();
    List<Entry> entries =
        Rehearsal.play(
            new Rehearsal.Setup(SHIP, casualty, 1, Mode.PRACTICE),
            new WitnessPlayer(casualty, SHIP),
            e -> {},
            s -> {});
    assertThat(entries)
        .isNotEmpty()
        .noneMatch(e -> e instanceof Entry.PlantEvent p && p.what().startsWith("outside"));
  }
}
