package handwheel.scoring;

import static org.assertj.core.api.Assertions.assertThat;

import handwheel.casualty.Window;
import handwheel.logbook.Entry;
import org.junit.jupiter.api.Test;

/** Times run from a cue, a phase or another step; what came before was not done for it. */
final class StartsTest {
  private static final Script STOP =
      new Script().with(Script.shut("stop", "main-stop").points(100).within(10)).pass(80);

  @Test
  void whatWasDoneBeforeItsCueIsEarlyAndEarnsNothing() {
    Run run = new Run();
    run.shut(40, "main-stop");
    ScoreSheet sheet = run.cue(200).score(STOP);
    assertThat(sheet.points()).isZero();
    assertThat(sheet.charges().get(0).type()).isEqualTo(ErrorClass.EARLY);
    assertThat(sheet.charges().get(0).why()).contains("before `roar` called for it");
  }

  @Test
  void whatIsEnteredInTheTickOfTheCueCounts() {
    Run run = new Run().cue(200);
    run.shut(200, "main-stop");
    assertThat(run.score(STOP).points()).isEqualTo(100);
  }

  @Test
  void whatWasDoneBeforeAndAgainAfterwardsCounts() {
    Script read = new Script().with(Script.proved("proof").points(100).within(10)).pass(80);
    Run run = new Run();
    run.read(40, 0).cue(200);
    run.read(260, 0);
    assertThat(run.score(read).points()).isEqualTo(100);
  }

  @Test
  void anOrderGivenBeforeAndAgainAfterwardsCounts() {
    Script clear =
        new Script()
            .with(Script.ordered("clear", "everyone leave").points(100).within(10))
            .pass(80);
    Run run = new Run();
    run.say(40, "everyone leave");
    run.cue(200);
    run.say(240, "everyone leave");
    assertThat(run.score(clear).points()).isEqualTo(100);
  }

  @Test
  void aFittingShutOpenedAndShutAgainAfterwardsCounts() {
    Run run = new Run();
    run.shut(40, "main-stop");
    run.open(100, "main-stop");
    run.cue(200);
    run.shut(240, "main-stop");
    assertThat(run.score(STOP).points()).isEqualTo(100);
  }

  @Test
  void aTimeToBeCompleteCallsForTheStepAsWell() {
    Script done = new Script().with(Script.shut("stop", "main-stop").points(100).done(30)).pass(80);
    Run run = new Run();
    run.shut(40, "main-stop");
    assertThat(run.cue(200).score(done).points()).isZero();
  }

  @Test
  void aTimeRunsFromAPhase() {
    Script script = since(Window.Since.PHASE, "fog");
    assertThat(stopAfterPhase(script, 300).points()).isEqualTo(100);
    assertThat(stopAfterPhase(script, 301).points()).isEqualTo(99);
  }

  private static ScoreSheet stopAfterPhase(Script script, long tick) {
    Run run = new Run().cue(0).add(100, new Entry.PhaseEntered(100, "fog"));
    int n = run.say(tick, tick, "burnerman shut main-stop");
    return run.moved(tick + 20, n, "main-stop", 0).score(script);
  }

  @Test
  void aTimeRunsFromAnotherStep() {
    Script script =
        new Script()
            .with(Script.shut("trip-step", "trip").points(50))
            .with(
                Script.shut("stop", "main-stop")
                    .points(50)
                    .since(10, Window.Since.STEP, "trip-step"))
            .pass(80);
    Run run = new Run().cue(0);
    run.shut(100, "trip");
    int n = run.say(305, 305, "burnerman shut main-stop");
    ScoreSheet sheet = run.moved(400, n, "main-stop", 0).score(script);
    assertThat(sheet.points()).isEqualTo(99);
    assertThat(sheet.charges().get(0).type()).isEqualTo(ErrorClass.LATE);
    assertThat(sheet.charges().get(0).why()).contains("10 s of step trip-step");
  }

  private static Script since(Window.Since since, String of) {
    return new Script()
        .with(Script.shut("stop", "main-stop").points(100).since(10, since, of))
        .pass(80);
  }
}
