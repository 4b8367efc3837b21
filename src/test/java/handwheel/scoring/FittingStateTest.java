package handwheel.scoring;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** When a fitting is in the state a step wants. Own fixtures. */
final class FittingStateTest {
  private static final Script SHUT = new Script().with(Script.shut("s", "main-stop").points(20));
  private static final Script OPEN = new Script().with(Script.open("s", "vent").points(20));

  private static StepResult step(Run run, Script script) {
    return run.score(script).steps().get(0);
  }

  @Test
  void aFittingThatStandsRightAndIsNeverMovedIsNotDone() {
    assertThat(step(new Run().cue(0), SHUT).isDone()).isFalse();
  }

  @Test
  void aPartStrokeIsNotShut() {
    Run run = new Run().cue(0);
    run.moved(150, run.say(100, "burnerman set main-stop to 40 %"), "main-stop", 400);
    ScoreSheet sheet = run.until(900).score(SHUT);
    assertThat(sheet.points()).isEqualTo(80);
    assertThat(sheet.charges().get(0).type()).isEqualTo(ErrorClass.PARTIAL);
  }

  @Test
  void setToNoughtIsShut() {
    Run run = new Run().cue(0);
    run.moved(150, run.say(100, "burnerman set main-stop to 0 %"), "main-stop", 0);
    assertThat(step(run, SHUT).isDone()).isTrue();
  }

  @Test
  void setToSomethingIsOpen() {
    Run run = new Run().cue(0);
    run.moved(150, run.say(100, "burnerman set vent to 30 %"), "vent", 300);
    assertThat(step(run, OPEN).isDone()).isTrue();
  }

  @Test
  void setDownwardIsNotOpened() {
    Script opened = new Script().with(Script.open("s", "vent").points(20).after("none", ""));
    Run run = new Run().cue(0);
    run.moved(90, 99, "vent", 800);
    run.moved(150, run.say(100, "burnerman set vent to 30 %"), "vent", 300);
    assertThat(step(run, opened).isDone()).isFalse();
  }

  @Test
  void aMachineMayStandElsewhereThanAtNoughtWhenStopped() {
    Script stopped = new Script().with(Script.shut("s", "pump").points(20));
    Run run = new Run().cue(0);
    run.moved(150, run.say(100, "pumpman stop pump"), "pump", 3000);
    assertThat(step(run, stopped).isDone()).isTrue();
    Script started = new Script().with(Script.open("s", "pump").points(20));
    Run again = new Run().cue(0);
    again.moved(150, again.say(100, "pumpman start pump"), "pump", 0);
    assertThat(step(again, started).isDone()).isTrue();
  }

  @Test
  void allFittingsMustBeDone() {
    Script both = new Script().with(Script.shut("s", "trip", "main-stop").points(20));
    Run run = new Run().cue(0);
    run.shut(100, "trip");
    ScoreSheet sheet = run.until(900).score(both);
    assertThat(sheet.points()).isEqualTo(80);
    assertThat(sheet.charges().get(0).type()).isEqualTo(ErrorClass.PARTIAL);
  }

  @Test
  void aMovementOfAnUnknownOrderCountsForNobody() {
    assertThat(step(new Run().cue(0).moved(100, 7, "main-stop", 0), SHUT).isDone()).isFalse();
  }
}
