package handwheel.scoring;

import static org.assertj.core.api.Assertions.assertThat;

import handwheel.logbook.Entry;
import org.junit.jupiter.api.Test;

/** What a step that was never done is called, and that it costs all its points. Own fixtures. */
final class OmissionTest {
  private static Charge only(Script script, Run run) {
    ScoreSheet sheet = run.until(900).score(script);
    assertThat(sheet.charges()).hasSize(1);
    assertThat(sheet.points()).isEqualTo(80);
    return sheet.charges().get(0);
  }

  private static Script shut() {
    return new Script().with(Script.shut("stop", "main-stop").points(20).within(10));
  }

  @Test
  void notDoneIsOmitted() {
    Charge charge = only(shut(), new Run().cue(0));
    assertThat(charge.type()).isEqualTo(ErrorClass.OMITTED);
    assertThat(charge.reading()).isEqualTo("never ordered");
    assertThat(charge.tick()).isEqualTo(200);
    assertThat(charge.why())
        .isEqualTo(
            "Not done: main-stop shut. Should have been: main-stop shut, begun within 10 s of roar."
                + " Because of stop. Rule O2.");
  }

  @Test
  void aProofNeverReadSaysWhatWasReadLast() {
    Script script = new Script().with(Script.proved("proved").points(20));
    assertThat(only(script, new Run().cue(0)).reading()).isEqualTo("never read");
    Charge charge = only(script, new Run().cue(0).read(500, 41_250));
    assertThat(charge.type()).isEqualTo(ErrorClass.OMITTED);
    assertThat(charge.reading()).isEqualTo("last read 41.25 psig at 0:25");
    assertThat(charge.why()).contains("burner-line read below 5 psig");
  }

  @Test
  void aReportNotPassedIsNotReported() {
    Script script = new Script().with(Script.reported("report", "what-is-wrong").points(20));
    assertThat(only(script, new Run().cue(0)).type()).isEqualTo(ErrorClass.NOT_REPORTED);
  }

  @Test
  void aCountWithSomebodyMissingIsPartial() {
    Script script = new Script().with(Script.counted("head-count").points(20));
    Charge charge = only(script, new Run().cue(0).counted(300, "checkman"));
    assertThat(charge.type()).isEqualTo(ErrorClass.PARTIAL);
    assertThat(charge.reading()).isEqualTo("6 of 7 counted, missing checkman");
    assertThat(only(script, new Run().cue(0)).type()).isEqualTo(ErrorClass.OMITTED);
  }

  @Test
  void workBegunAndNotFinishedIsPartial() {
    Run run = new Run().cue(0);
    int n = run.say(100, "burnerman shut main-stop");
    run.add(150, new Entry.Began(150, n, "burnerman", "main-stop", TestShip.INSIDE));
    assertThat(only(shut(), run).type()).isEqualTo(ErrorClass.PARTIAL);
  }

  @Test
  void movedTheOtherWayIsWrongWay() {
    Run run = new Run().cue(0);
    run.open(100, "main-stop");
    assertThat(only(shut(), run).type()).isEqualTo(ErrorClass.WRONG_WAY);
  }

  @Test
  void aLikeFittingWorkedInItsPlaceIsWrongFitting() {
    Run run = new Run().cue(0);
    run.shut(100, "other-stop");
    assertThat(only(shut(), run).type()).isEqualTo(ErrorClass.WRONG_FITTING);
  }

  @Test
  void aFittingOfAnotherSortIsNoStandIn() {
    Run run = new Run().cue(0);
    run.shut(100, "fan");
    run.open(200, "vent");
    assertThat(only(shut(), run).type()).isEqualTo(ErrorClass.OMITTED);
  }

  @Test
  void oneStrayStandsInForOneStepOnly() {
    Script two =
        new Script()
            .with(Script.shut("stop", "main-stop").points(10))
            .with(Script.shut("quick", "quick-valve").points(10));
    Run run = new Run().cue(0);
    run.shut(100, "other-stop");
    assertThat(run.until(900).score(two).charges())
        .extracting(Charge::type)
        .containsExactly(ErrorClass.WRONG_FITTING, ErrorClass.OMITTED);
  }

  @Test
  void whatAnotherStepAsksForIsNoStray() {
    Script two =
        new Script()
            .with(Script.shut("stop", "main-stop").points(10))
            .with(Script.shut("other", "other-stop").points(10));
    Run run = new Run().cue(0);
    run.shut(100, "other-stop");
    assertThat(run.until(900).score(two).charges())
        .extracting(Charge::type)
        .containsExactly(ErrorClass.OMITTED);
  }

  @Test
  void anEmptyRunLosesEverythingAndEndsAtItsLastTick() {
    ScoreSheet sheet = new Run().until(40).score(EightActs.CASUALTY);
    assertThat(sheet.points()).isZero();
    assertThat(sheet.isPass()).isFalse();
    assertThat(sheet.charges()).hasSize(8).allMatch(c -> c.tick() == 40);
  }
}
