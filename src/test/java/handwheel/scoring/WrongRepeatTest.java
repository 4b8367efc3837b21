package handwheel.scoring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import org.junit.jupiter.api.Test;

/**
 * A wrong repeat-back is caught or charged. The protocol (order, repeat-back, the sender confirms;
 * on a wrong one says so and repeats) is informed by DOE-STD-1031-92, 4.1.2; the points are ours.
 */
final class WrongRepeatTest {
  private static final String SAID = "burnerman shut main-stop";
  private static final String HEARD = "burnerman shut other-stop";
  private static final Script STOP =
      new Script().with(Script.shut("stop", "main-stop").points(20).within(10));

  /** Said at 200, wrongly repeated at 240. */
  private static Run misheard() {
    Run run = new Run().cue(0);
    run.repeated(240, run.say(200, 200, SAID), "burnerman", HEARD);
    return run;
  }

  @Test
  void caughtItCostsNothingAndTheFirstOrderCounts() {
    Run run = misheard();
    run.say(260, "belay burnerman");
    run.moved(500, run.say(300, 300, SAID), "main-stop", 0);
    ScoreSheet sheet = run.score(STOP);
    assertThat(sheet.points()).isEqualTo(100);
    assertThat(sheet.steps().get(0).instantTick()).isEqualTo(200);
    assertThat(sheet.steps().get(0).orders()).containsExactly(3);
    assertThat(sheet.notes())
        .extracting(Note::text)
        .containsExactly("burnerman repeated `" + HEARD + "` for `" + SAID + "`; caught");
  }

  @Test
  void twiceMisheardAndTwiceCaughtCostsNothing() {
    Run run = misheard();
    run.say(260, "belay burnerman");
    run.repeated(340, run.say(300, SAID), "burnerman", HEARD);
    run.say(360, "belay burnerman");
    run.moved(600, run.say(400, SAID), "main-stop", 0);
    assertThat(run.score(STOP).points()).isEqualTo(100);
  }

  @Test
  void whatCrewCostIsTakenOffTheTimeForTheEffectToo() {
    Script script = new Script().with(Script.shut("stop", "main-stop").points(20).done(20));
    Run run = misheard();
    run.say(260, "belay burnerman");
    run.moved(500, run.say(300, 300, SAID), "main-stop", 0);
    assertThat(run.score(script).points()).isEqualTo(100);
  }

  @Test
  void uncaughtItIsNotConfirmed() {
    Run run = misheard();
    run.moved(400, 1, "other-stop", 0);
    ScoreSheet sheet = run.until(900).score(STOP);
    assertThat(sheet.charges())
        .singleElement()
        .satisfies(
            c -> {
              assertThat(c.type()).isEqualTo(ErrorClass.NOT_CONFIRMED);
              assertThat(c.points()).isEqualTo(20);
              assertThat(c.step()).isEqualTo("stop");
            });
    assertThat(sheet.notes()).extracting(Note::text).first().asString().endsWith("not caught");
  }

  @Test
  void calledBackAfterTheWrongThingWasDoneIsTooLate() {
    Run run = misheard();
    run.moved(400, 1, "other-stop", 0);
    run.say(420, "belay burnerman");
    assertThat(run.until(900).score(STOP).charges())
        .extracting(Charge::type)
        .containsExactly(ErrorClass.NOT_CONFIRMED);
  }

  @Test
  void mendedAfterwardsOnlyTheDelayIsCharged() {
    Run run = misheard();
    run.moved(290, 1, "other-stop", 0);
    run.moved(500, run.say(300, 300, SAID), "main-stop", 0);
    ScoreSheet sheet = run.score(STOP);
    assertThat(sheet.charges())
        .singleElement()
        .satisfies(
            c -> {
              assertThat(c.type()).isEqualTo(ErrorClass.NOT_CONFIRMED);
              assertThat(c.points()).isEqualTo(5);
            });
  }

  @Test
  void caughtAndNeverSaidAgainIsOmitted() {
    Run run = misheard();
    run.say(260, "belay burnerman");
    assertThat(run.until(900).score(STOP).charges())
        .extracting(Charge::type, Charge::points)
        .containsExactly(tuple(ErrorClass.OMITTED, 20));
  }

  @Test
  void belayingAnotherManCatchesNothing() {
    Run run = misheard();
    run.say(260, "belay checkman");
    assertThat(run.until(900).score(STOP).charges())
        .extracting(Charge::type)
        .containsExactly(ErrorClass.NOT_CONFIRMED);
  }

  @Test
  void aBelayStopsOnlyWhatTheManWasLastTold() {
    Run run = misheard();
    run.say(250, "burnerman look grating");
    run.say(260, "belay burnerman");
    assertThat(run.until(900).score(STOP).charges())
        .extracting(Charge::type)
        .containsExactly(ErrorClass.NOT_CONFIRMED);
  }

  @Test
  void anOrderThatIsTheStepItselfIsSpoiledToo() {
    Script go =
        new Script().with(Script.ordered("send", "remote-hand go remote-station").points(20));
    Run run = new Run().cue(0);
    int n = run.say(100, "remote-hand go remote-station");
    run.repeated(140, n, "remote-hand", "remote-hand go grating");
    assertThat(run.until(900).score(go).charges())
        .extracting(Charge::type)
        .containsExactly(ErrorClass.NOT_CONFIRMED);
    run.say(160, "belay remote-hand");
    run.say(200, "remote-hand go remote-station");
    ScoreSheet sheet = run.score(go);
    assertThat(sheet.points()).isEqualTo(100);
    assertThat(sheet.steps().get(0).instantTick()).isEqualTo(100);
  }

  @Test
  void aRightRepeatBackIsNoMishearing() {
    Run run = new Run().cue(0);
    int n = run.say(100, SAID);
    run.repeated(140, n, "burnerman", SAID).moved(400, n, "main-stop", 0);
    ScoreSheet sheet = run.score(STOP);
    assertThat(sheet.points()).isEqualTo(100);
    assertThat(sheet.notes()).isEmpty();
  }
}
