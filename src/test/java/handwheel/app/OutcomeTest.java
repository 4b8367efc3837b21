package handwheel.app;

import static org.assertj.core.api.Assertions.assertThat;

import handwheel.debrief.Scored;
import handwheel.debrief.Scripts;
import handwheel.drill.Mode;
import handwheel.drill.Rehearsal;
import handwheel.logbook.Entry;
import handwheel.proof.WitnessPlayer;
import handwheel.reader.ScriptReader;
import handwheel.scoring.Charge;
import handwheel.scoring.ErrorClass;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What must not come to pass is charged once, when it has come to pass. */
final class OutcomeTest {
  /** The example whose steam falls to 313 psig while it is done right. */
  private static Scripts.Found secondHalf(String limit) throws IOException {
    Path file = Path.of("docs/scripts/examples/second-half.yaml");
    Scripts.Found found = Shipped.DRILLS.load(file).found().orElseThrow();
    String text = Files.readString(file);
    assertThat(text).contains("below: 300 psig");
    byte[] bytes =
        text.replace("below: 300 psig, for: 2 s", limit).getBytes(StandardCharsets.UTF_8);
    return new Scripts.Found(
        found.ship(), ScriptReader.read("limit.yaml", bytes, found.ship()).value().orElseThrow());
  }

  private static Scored play(Scripts.Found found) {
    Rehearsal.Setup setup = new Rehearsal.Setup(found.ship(), found.casualty(), 1, Mode.PRACTICE);
    return Scored.play(setup, new WitnessPlayer(found.casualty(), found.ship()), e -> {}, s -> {});
  }

  @Test
  void steamThatFallsTooFarIsChargedOnce() throws IOException {
    Scored run = play(secondHalf("below: 320 psig, for: 2 s"));
    List<Charge> lost = run.sheet().charges();

    assertThat(lost).hasSize(1);
    assertThat(lost.get(0).step()).isEqualTo("steam-lost");
    assertThat(lost.get(0).type()).isEqualTo(ErrorClass.HARM);
    assertThat(lost.get(0).points()).isEqualTo(5);
    assertThat(lost.get(0).why()).contains("It came to this: steam lost", "auxiliaries stop");
    assertThat(run.sheet().points()).isEqualTo(95);
    assertThat(run.entries().stream().filter(OutcomeTest::isSteamLost)).hasSize(1);
  }

  @Test
  void itHasToLastItsTime() throws IOException {
    assertThat(play(secondHalf("below: 320 psig, for: 60 s")).sheet().points()).isEqualTo(100);
  }

  @Test
  void whatDoesNotComeToPassCostsNothing() throws IOException {
    Scored right = play(secondHalf("below: 300 psig"));

    assertThat(right.sheet().points()).isEqualTo(100);
    assertThat(right.entries().stream().filter(OutcomeTest::isSteamLost)).isEmpty();
  }

  private static boolean isSteamLost(Entry entry) {
    return entry instanceof Entry.Broke b && b.never().equals("steam-lost") && b.n() == 0;
  }
}
