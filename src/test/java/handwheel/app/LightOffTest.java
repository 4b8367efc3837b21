package handwheel.app;

import static org.assertj.core.api.Assertions.assertThat;

import handwheel.debrief.Scored;
import handwheel.debrief.Scripts;
import handwheel.drill.Mode;
import handwheel.drill.Rehearsal;
import handwheel.logbook.Entry;
import handwheel.proof.WitnessPlayer;
import java.io.IOException;
import org.junit.jupiter.api.Test;

/** A burner is lit by the torch that goes in with the order to light it; common practice. */
final class LightOffTest {
  @Test
  void theFirstBurnerIsLitByItsTorch() throws IOException, Usage {
    Scripts.Found found =
        Shipped.DRILLS
            .load(Shipped.DRILLS.file("light-off"))
            .found()
            .orElseThrow()
            .played(1, Mode.PRACTICE);
    Rehearsal.Setup setup = new Rehearsal.Setup(found.ship(), found.casualty(), 1, Mode.PRACTICE);
    WitnessPlayer witness = new WitnessPlayer(found.casualty(), found.ship());
    Scored run = Scored.play(setup, witness, e -> {}, s -> {});

    assertThat(run.entries().stream())
        .anyMatch(
            e -> e instanceof Entry.PlantEvent p && p.what().equals("burner s1 lit by torch"));
  }
}
