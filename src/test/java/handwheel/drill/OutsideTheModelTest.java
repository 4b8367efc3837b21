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
import handwheel.scoring.ScoreSheet;
import handwheel.scoring.ScoreText;
import handwheel.scoring.Scorer;
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
    assertThat(witness())
        .isNotEmpty()
        .noneMatch(e -> e instanceof Entry.PlantEvent p && p.what().startsWith("outside"));
  }

  /** Rehearsal and debrief print the score sheet: the stamp stands on it. */
  @Test
  void theScoreSheetShowsTheStamp() {
    Casualty casualty = ShippedFiles.steamLeak();
    List<Entry> entries = new ArrayList<>(witness());
    entries.add(new Entry.PlantEvent(1_200, "outside the model: bilge depth 3.50 ft"));
    ScoreSheet sheet = Scorer.score(casualty, SHIP, entries);
    assertThat(ScoreText.lines(casualty, SHIP, entries, sheet))
        .anyMatch(line -> line.contains("outside the model: bilge depth 3.50 ft"));
  }

  private static List<Entry> witness() {
    Casualty casualty = ShippedFiles.steamLeak();
    return Rehearsal.play(
        new Rehearsal.Setup(SHIP, casualty, 1, Mode.PRACTICE),
        new WitnessPlayer(casualty, SHIP),
        e -> {},
        s -> {});
  }
}
