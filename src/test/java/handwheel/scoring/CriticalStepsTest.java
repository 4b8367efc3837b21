package handwheel.scoring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Critical steps: a hard stop fails the run whatever the points, and the points are told all the
 * same. Informed by the critical tasks of NUREG-1021 (read about, not in it).
 */
final class CriticalStepsTest {
  /**
   * As in a major steam leak: fires out, proved out, then both stops; the proof is not critical.
   */
  private static final Script SCRIPT =
      new Script()
          .with(Script.shut("trip", "trip").points(15).critical())
          .with(Script.proved("proved").points(10).after("trip", "O2"))
          .with(
              Script.shut("stop", "main-stop")
                  .points(15)
                  .within(60)
                  .critical()
                  .after("proved", "O2"))
          .with(Script.shut("other", "other-stop").points(15).critical().after("proved", "O2"));

  private static Run run(long... proofTicks) {
    Run run = new Run().cue(0);
    run.shut(100, "trip");
    readAt(run, 150, proofTicks);
    run.shut(200, "main-stop");
    readAt(run, 250, proofTicks);
    run.shut(300, "other-stop");
    readAt(run, 350, proofTicks);
    return run.until(2_000);
  }

  private static void readAt(Run run, long tick, long... proofTicks) {
    if (Arrays.stream(proofTicks).anyMatch(t -> t == tick)) {
      run.read(tick, 2_000);
    }
  }

  @Test
  void metWhenDoneInOrderInTimeAndSafely() {
    ScoreSheet sheet = run(150).score(SCRIPT);
    assertThat(sheet.isPass()).isTrue();
    assertThat(sheet.critical())
        .extracting(CriticalAct::id, CriticalAct::standing)
        .containsExactly(
            tuple("trip", CriticalAct.Standing.MET),
            tuple("stop", CriticalAct.Standing.MET),
            tuple("other", CriticalAct.Standing.MET));
  }

  @Test
  void failedWhenDoneBeforeWhatMustComeFirst() {
    ScoreSheet sheet = run(250).score(SCRIPT);
    assertThat(sheet.points()).isEqualTo(90);
    assertThat(sheet.isPass()).isFalse();
    assertThat(sheet.critical())
        .extracting(CriticalAct::isFailure)
        .containsExactly(false, true, false);
    assertThat(sheet.charges())
        .extracting(Charge::step, Charge::points, Charge::isCritical)
        .containsExactly(tuple("stop", 10, true));
  }

  /** The proof is one mistake and takes the points; the stops were shut unproved all the same. */
  @Test
  void failedThoughAnotherActTakesThePoints() {
    ScoreSheet sheet = run(350).score(SCRIPT);
    assertThat(sheet.points()).isEqualTo(90);
    assertThat(sheet.isPass()).isFalse();
    assertThat(sheet.charges())
        .extracting(Charge::step, Charge::points, Charge::isCritical)
        .containsExactly(
            tuple("proved", 10, false), tuple("stop", 0, true), tuple("other", 0, true));
  }

  /** Never proving at all must not come out better than proving late. */
  @Test
  void failedWhenWhatMustComeFirstWasLeftOut() {
    ScoreSheet sheet = run().score(SCRIPT);
    assertThat(sheet.points()).isEqualTo(90);
    assertThat(sheet.isPass()).isFalse();
    assertThat(sheet.charges().get(1).why())
        .startsWith("Done without `proved`, which must come first");
  }

  @Test
  void failedWhenLateByASecond() {
    Run run = new Run().cue(0);
    run.shut(100, "trip");
    run.read(150, 2_000);
    run.shut(1_211, "main-stop");
    run.shut(1_300, "other-stop");
    ScoreSheet sheet = run.score(SCRIPT);
    assertThat(sheet.points()).isEqualTo(99);
    assertThat(sheet.isPass()).isFalse();
    assertThat(sheet.critical().get(1).why()).isEqualTo("Came 0.05 s after its time");
  }

  @Test
  void thePreferenceForTheSuperheaterFailsNobody() {
    Script script =
        new Script()
            .with(Script.shut("out-superheater", "quick-valve").points(10))
            .with(
                Script.shut("out-saturated", "trip")
                    .points(10)
                    .critical()
                    .after("out-superheater", "O1"));
    Run run = new Run().cue(0);
    run.shut(100, "trip");
    ScoreSheet sheet = run.until(900).score(script);
    assertThat(sheet.points()).isEqualTo(90);
    assertThat(sheet.isPass()).isTrue();
  }

  @Test
  void belowThePassMarkIsAFailWithEveryCriticalActMet() {
    Script script =
        new Script()
            .with(Script.shut("trip", "trip").points(15).critical())
            .with(Script.shut("fan", "fan").points(21));
    Run run = new Run().cue(0);
    run.shut(100, "trip");
    ScoreSheet sheet = run.until(900).score(script);
    assertThat(sheet.points()).isEqualTo(79);
    assertThat(sheet.critical()).noneMatch(CriticalAct::isFailure);
    assertThat(sheet.isPass()).isFalse();
    assertThat(run.score(script.pass(79)).isPass()).isTrue();
  }

  /** Every critical act that failed has a line among the charges, so the record explains itself. */
  @Test
  void everyFailureHasACriticalCharge() {
    Random random = new Random(12);
    for (int i = 0; i < 500; i++) {
      ScoreSheet sheet = new AnyRun(random).score();
      assertThat(sheet.critical().stream().filter(CriticalAct::isFailure).map(CriticalAct::id))
          .as("run %d", i)
          .containsExactlyInAnyOrderElementsOf(
              sheet.charges().stream()
                  .filter(Charge::isCritical)
                  .map(Charge::step)
                  .distinct()
                  .toList());
    }
  }
}
