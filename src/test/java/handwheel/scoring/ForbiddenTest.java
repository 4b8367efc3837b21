package handwheel.scoring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import handwheel.casualty.Basis;
import handwheel.casualty.Never;
import handwheel.casualty.OutcomeRule;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Broken rules and people hurt. Own fixtures. */
final class ForbiddenTest {
  private static final Never.Act SHUTTING = new Never.Moving("main-stop", false);

  private static Script script(boolean isCritical) {
    return new Script()
        .with(Script.shut("trip", "trip").points(15))
        .with(Script.shut("stop", "main-stop").points(15).after("trip", "O2"))
        .never("stop-on-fire", SHUTTING, 20, isCritical);
  }

  @Test
  void aRuleKeptCostsNothing() {
    Run run = new Run().cue(0);
    run.shut(100, "trip");
    run.shut(200, "main-stop");
    ScoreSheet sheet = run.score(script(true));
    assertThat(sheet.points()).isEqualTo(100);
    assertThat(sheet.critical())
        .containsExactly(
            new CriticalAct(
                "stop-on-fire", CriticalAct.Standing.MET, StepResult.NEVER, "rule kept"));
  }

  /** The charge of the rule replaces the one for the order of the same act. */
  @Test
  void aBrokenRuleReplacesTheChargeForTheOrder() {
    Run run = new Run().cue(0);
    int n = run.shut(100, "main-stop");
    run.broke(110, n, "stop-on-fire");
    run.shut(200, "trip");
    ScoreSheet sheet = run.score(script(false));
    assertThat(sheet.charges())
        .extracting(Charge::step, Charge::points, Charge::type)
        .containsExactly(tuple("stop-on-fire", 20, ErrorClass.UNSAFE));
    assertThat(sheet.charges().get(0).reading()).isEqualTo("burner-line 41.5 (SI)");
    assertThat(sheet.isPass()).isTrue();
  }

  /** The first attempt broke the rule; what the rule charges is not charged for the order again. */
  @Test
  void aBrokenRuleOnTheSameFittingReplacesItToo() {
    Run run = new Run().cue(0);
    int n = run.say(60, "checkman shut main-stop");
    run.broke(70, n, "stop-on-fire");
    run.say(80, "belay checkman");
    run.shut(100, "main-stop");
    run.shut(200, "trip");
    assertThat(run.score(script(false)).charges())
        .extracting(Charge::step)
        .containsExactly("stop-on-fire");
  }

  @Test
  void aCriticalRuleFailsTheRunWhateverThePoints() {
    Run run = new Run().cue(0);
    run.shut(100, "trip");
    int n = run.shut(200, "main-stop");
    run.broke(210, n, "stop-on-fire");
    ScoreSheet sheet = run.score(script(true).pass(0));
    assertThat(sheet.points()).isEqualTo(80);
    assertThat(sheet.isPass()).isFalse();
  }

  @Test
  void brokenOftenItIsChargedOnce() {
    Run run = new Run().cue(0);
    run.shut(90, "trip");
    int n = run.shut(100, "main-stop");
    run.broke(110, n, "stop-on-fire").broke(130, n, "stop-on-fire").broke(150, n, "stop-on-fire");
    ScoreSheet sheet = run.score(script(false));
    assertThat(sheet.charges())
        .singleElement()
        .satisfies(
            c -> {
              assertThat(c.points()).isEqualTo(20);
              assertThat(c.tick()).isEqualTo(110);
              assertThat(c.why())
                  .startsWith("Forbidden then: a forbidden act (3 times, charged once).")
                  .contains("main-stop not moved toward shut")
                  .endsWith("Rule N3.");
            });
  }

  @Test
  void aRuleThatConcernsAnotherActLeavesTheOrderChargeStanding() {
    Script both =
        script(false)
            .never("to-the-jet", new Never.Sending("checkman", List.of("grating")), 5, false);
    Run run = new Run().cue(0);
    run.shut(100, "main-stop");
    int n = run.say(150, "checkman go grating");
    run.broke(150, n, "to-the-jet");
    run.shut(200, "trip");
    assertThat(run.score(both).charges())
        .extracting(Charge::step, Charge::points)
        .containsExactly(tuple("stop", 15), tuple("to-the-jet", 5));
    assertThat(run.score(both).charges().get(1).why()).contains("not checkman sent to grating");
  }

  private static Script people(OutcomeRule.Harm harm, int above) {
    return new Script().with(Script.shut("trip", "trip").points(15)).outcome(harm, above, 20);
  }

  private static Run done() {
    Run run = new Run().cue(0);
    run.shut(100, "trip");
    return run;
  }

  @Test
  void eachPersonCountsOnceAndDownIsHurtToo() {
    Run run = done().person(200, "checkman", "hurt").person(300, "checkman", "down");
    run.person(250, "pumpman", "left").person(400, "burnerman", "down");
    ScoreSheet hurt = run.score(people(OutcomeRule.Harm.HURT, 0));
    assertThat(hurt.charges())
        .extracting(Charge::step, Charge::type, Charge::points, Charge::tick, Charge::reading)
        .containsExactly(
            tuple(
                "people-hurt",
                ErrorClass.HARM,
                20,
                200L,
                "checkman dose 0.31, burnerman dose 0.31"));
    assertThat(hurt.isPass()).isFalse();
    assertThat(hurt.notes())
        .extracting(Note::kind, Note::tick, Note::step)
        .containsExactly(tuple(Note.Kind.DOWN, 300L, ""), tuple(Note.Kind.DOWN, 400L, ""));
  }

  @Test
  void onlyMorePeopleThanAllowedAreCharged() {
    Run run = done().person(200, "checkman", "hurt").person(300, "pumpman", "hurt");
    assertThat(run.score(people(OutcomeRule.Harm.HURT, 2)).points()).isEqualTo(100);
    ScoreSheet sheet = run.score(people(OutcomeRule.Harm.HURT, 1));
    assertThat(sheet.charges()).extracting(Charge::tick).containsExactly(300L);
    assertThat(run.score(people(OutcomeRule.Harm.DOWN, 0)).points()).isEqualTo(100);
  }

  /** The points of rules and outcomes come off the whole, down to nought and no further. */
  @Test
  void theLastChargesAreCutToWhatIsLeft() {
    Script script =
        new Script()
            .with(Script.shut("trip", "trip").points(70))
            .never("stop-on-fire", SHUTTING, 20, false)
            .outcome(OutcomeRule.Harm.HURT, 0, 30);
    Run run = new Run().cue(0).broke(100, 1, "stop-on-fire").person(200, "checkman", "hurt");
    ScoreSheet sheet = run.until(400).score(script);
    assertThat(sheet.points()).isZero();
    assertThat(sheet.charges()).extracting(Charge::points).containsExactly(70, 20, 10);
    assertThat(sheet.charges().get(2).why()).endsWith("Worth 30, but only 10 were left to lose.");
  }

  @Test
  void aChargeOnTheModelAloneIsNeverCritical() {
    Script script =
        new Script().with(Script.shut("trip", "trip").points(5).critical().basis(Basis.MODEL_ONLY));
    ScoreSheet sheet = new Run().cue(0).until(400).score(script);
    assertThat(sheet.points()).isEqualTo(95);
    assertThat(sheet.isPass()).isTrue();
    assertThat(sheet.critical()).isEmpty();
    assertThat(sheet.charges().get(0).isCritical()).isFalse();
  }

  /** One act, one charge: the dearer of two rules that it breaks; both fail the run. */
  @Test
  void twoRulesBrokenByOneActAreChargedOnce() {
    Run run = new Run().cue(0);
    run.shut(100, "trip");
    int n = run.shut(200, "main-stop");
    run.broke(210, n, "stop-on-fire");
    run.broke(210, n, "stop-in-the-roar");
    Script two = script(true).never("stop-in-the-roar", SHUTTING, 10, true);
    ScoreSheet sheet = run.score(two);
    assertThat(sheet.charges())
        .extracting(Charge::step, Charge::points)
        .containsExactly(tuple("stop-on-fire", 20), tuple("stop-in-the-roar", 0));
    assertThat(sheet.charges().get(1).why()).contains("charged with `stop-on-fire`");
    assertThat(sheet.critical()).filteredOn(CriticalAct::isFailure).hasSize(2);
  }

  @Test
  void twoRulesBrokenByTwoActsAreChargedTwice() {
    Run run = new Run().cue(0);
    run.shut(100, "trip");
    run.broke(210, run.shut(200, "main-stop"), "stop-on-fire");
    run.broke(310, run.shut(300, "main-stop"), "stop-in-the-roar");
    Script two = script(true).never("stop-in-the-roar", SHUTTING, 10, true);
    assertThat(run.score(two).points()).isEqualTo(70);
  }
}
