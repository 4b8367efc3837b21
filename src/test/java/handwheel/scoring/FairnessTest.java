package handwheel.scoring;

import static org.assertj.core.api.Assertions.assertThat;

import handwheel.casualty.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Properties of a fair scorer on random scripts and runs. The list is ours; it is informed by the
 * STCW Code, A-I/12, on explicit criteria and on scoring methods used with caution until validated.
 * Properties 1 and 2 are in {@link EightActsTest}, 8 in {@link WholeNumbersTest}, 10 and 11 in
 * {@link OneMistakeOneChargeTest}.
 */
final class FairnessTest {
  private static final int RUNS = 1_000;

  /** Property 3: doing a step at any moment is never worth less than leaving it out. */
  @Test
  void doingIsNeverWorthLessThanLeavingOut() {
    Random random = new Random(3);
    for (int i = 0; i < RUNS; i++) {
      AnyRun any = new AnyRun(random);
      int step = random.nextInt(AnyRun.STEPS);
      List<AnyRun.Event> without = new ArrayList<>(any.events);
      without.removeIf(e -> e.what() == step || (isAProof(e.what()) && isAProof(step)));
      List<AnyRun.Event> with = new ArrayList<>(without);
      with.add(new AnyRun.Event(any.someTick(), step));
      assertThat(any.run(with).score(any.casualty).points())
          .as("run %d, step %d", i, step)
          .isGreaterThanOrEqualTo(any.run(without).score(any.casualty).points());
    }
  }

  /** Two proofs of the script are read off the same gauge, so one reading does both. */
  private static boolean isAProof(int step) {
    return step == 3 || step == 4;
  }

  /** Property 4: later is never worth more, and one second more costs at most one point. */
  @Test
  void everySecondCostsAtMostOnePoint() {
    Script script =
        new Script()
            .with(Script.shut("s0", "f0").points(15).within(10).done(12).side(Step.Side.REMOTE));
    List<Integer> points = new ArrayList<>();
    for (long tick = 60; tick < 1200; tick++) {
      Run run = new Run().cue(0);
      run.shut(tick, "f0");
      points.add(run.until(2000).score(script).points());
    }
    for (int i = 20; i < points.size(); i++) {
      assertThat(points.get(i)).isBetween(points.get(i - 20) - 1, points.get(i - 1));
    }
    assertThat(points).contains(100, 99, 86, 85).endsWith(85);
  }

  /** Property 5: what is told as lost is what is lost, to the point; 8: always 0 to 100. */
  @Test
  void chargesAddUp() {
    Random random = new Random(5);
    int emptied = 0;
    for (int i = 0; i < RUNS; i++) {
      AnyRun any = new AnyRun(random);
      Run run = any.run();
      withHarm(random, run);
      ScoreSheet sheet = run.score(any.casualty);
      int lost = sheet.charges().stream().mapToInt(Charge::points).sum();
      assertThat(sheet.points()).as("run %d", i).isBetween(0, 100).isEqualTo(100 - lost);
      assertThat(sheet.charges()).allMatch(c -> c.points() >= 0);
      assertThat(sheet.steps()).allMatch(s -> s.lost() <= s.points());
      emptied += sheet.points() == 0 ? 1 : 0;
    }
    assertThat(emptied).as("runs that lost more than there was").isPositive();
  }

  private static void withHarm(Random random, Run run) {
    if (random.nextBoolean()) {
      run.broke(500, 1, "n0").person(600, "checkman", "hurt");
    }
  }

  /** Property 6: every charge says which step, which line, when, on what reading and why. */
  @Test
  void everyChargeIsAccountedFor() {
    Random random = new Random(6);
    for (int i = 0; i < RUNS; i++) {
      AnyRun any = new AnyRun(random);
      Run run = any.run();
      withHarm(random, run);
      for (Charge c : run.score(any.casualty).charges()) {
        assertThat(c.step()).isNotBlank();
        assertThat(c.spot().line()).isPositive();
        assertThat(c.tick()).isBetween(0L, 2400L);
        assertThat(c.reading()).isNotBlank();
        assertThat(c.why()).contains("Should have been: ").doesNotContain("..");
        assertThat(c.why())
            .matches(c.type() == ErrorClass.HARM ? ".*" : "(?s).*[Rr]ule [NO]\\d+.*");
      }
    }
  }

  /** Property 7: looking and asking are free, wherever they stand in the run. */
  @Test
  void lookingIsFree() {
    Random random = new Random(71);
    for (int i = 0; i < RUNS; i++) {
      AnyRun any = new AnyRun(random);
      ScoreSheet before = any.score();
      any.events.add(new AnyRun.Event(any.someTick(), AnyRun.STEPS + random.nextInt(2)));
      ScoreSheet after = any.score();
      assertThat(after.points()).as("run %d", i).isEqualTo(before.points());
      assertThat(after.isPass()).isEqualTo(before.isPass());
    }
  }

  /** Property 7 again: a second look at the gauge that proves something can only help. */
  @Test
  void lookingAgainAtAProofNeverCosts() {
    Random random = new Random(72);
    for (int i = 0; i < RUNS; i++) {
      AnyRun any = new AnyRun(random);
      int before = any.score().points();
      any.events.add(new AnyRun.Event(any.someTick(), 3));
      assertThat(any.score().points()).as("run %d", i).isGreaterThanOrEqualTo(before);
    }
  }

  /** Property 9: the same entries, the same sheet; a score among them is not looked at. */
  @Test
  void theSameEntriesGiveTheSameSheet() {
    Random random = new Random(9);
    for (int i = 0; i < 200; i++) {
      AnyRun any = new AnyRun(random);
      ScoreSheet live = any.score();
      ScoreSheet again = any.run().add(3_000, live.toEntry()).score(any.casualty);
      assertThat(again).isEqualTo(live);
    }
  }
}
