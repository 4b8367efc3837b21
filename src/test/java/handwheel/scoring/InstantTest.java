package handwheel.scoring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import handwheel.casualty.Step;
import handwheel.logbook.Entry;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The one instant of a step for each test. Own fixtures. */
final class InstantTest {
  private static final Script STOP =
      new Script().with(Script.shut("stop", "main-stop").points(20).within(10));

  private static Run toldAt(long tick, long from) {
    Run run = new Run().cue(0);
    run.moved(tick + 20, run.say(tick, from, "burnerman shut main-stop"), "main-stop", 0);
    return run;
  }

  @Test
  void theFirstKeyCountsForTheTimeAllowed() {
    assertThat(toldAt(260, 200).score(STOP).points()).isEqualTo(100);
    assertThat(toldAt(261, 201).score(STOP).points()).isEqualTo(99);
  }

  @Test
  void theFirstKeyCountsAtMostFourSecondsBeforeEnter() {
    assertThat(toldAt(280, 20).score(STOP).points()).isEqualTo(100);
    assertThat(toldAt(281, 20).score(STOP).points()).isEqualTo(99);
  }

  @Test
  void enterCountsForTheOrder() {
    Script script =
        new Script()
            .with(Script.shut("trip", "trip").points(10))
            .with(Script.shut("stop", "main-stop").points(10).after("trip", "O2"));
    Run run = new Run().cue(0);
    run.moved(120, run.say(100, 90, "burnerman trip trip"), "trip", 0);
    // Typed before the trip was entered, entered after it.
    run.moved(130, run.say(101, 60, "burnerman shut main-stop"), "main-stop", 0);
    ScoreSheet sheet = run.score(script);
    assertThat(sheet.points()).isEqualTo(100);
    assertThat(sheet.steps())
        .extracting(StepResult::begunTick, StepResult::instantTick, StepResult::completeTick)
        .containsExactly(tuple(90L, 100L, 120L), tuple(60L, 101L, 130L));
  }

  @Test
  void anActBeforeItsCueWasNotDoneForIt() {
    Run run = new Run();
    run.shut(100, "main-stop");
    assertThat(run.cue(500).score(STOP).points()).isEqualTo(80);
  }

  @Test
  void aCueThatNeverCameCannotBeMissed() {
    Run run = new Run();
    run.shut(5_000, "main-stop");
    assertThat(run.score(STOP).points()).isEqualTo(100);
  }

  @Test
  void theWindowRunsFromTheFirstTimeTheCueWasGiven() {
    Run run = new Run().cue(0).cue(400);
    // First key half a second before Enter: 490, so 290 ticks over, 15 seconds begun.
    run.shut(500, "main-stop");
    assertThat(run.score(STOP).points()).isEqualTo(85);
  }

  @Test
  void oneSecondBegunIsOnePoint() {
    assertThat(toldAt(201, 201).score(STOP).points()).isEqualTo(99);
    assertThat(toldAt(220, 220).score(STOP).points()).isEqualTo(99);
    assertThat(toldAt(221, 221).score(STOP).points()).isEqualTo(98);
    assertThat(toldAt(4_000, 4_000).score(STOP).points()).isEqualTo(80);
  }

  @Test
  void theWorseOfBegunLateAndDoneLateIsChargedNotBoth() {
    Script script =
        new Script().with(Script.shut("stop", "main-stop").points(20).within(10).done(15));
    Run run = new Run().cue(0);
    run.moved(360, run.say(240, 240, "burnerman shut main-stop"), "main-stop", 0);
    ScoreSheet sheet = run.score(script);
    assertThat(sheet.charges()).singleElement().satisfies(c -> assertThat(c.points()).isEqualTo(3));
    assertThat(sheet.charges().get(0).reading()).isEqualTo("3 s late");
    assertThat(sheet.charges().get(0).why()).contains("complete within 15 s of roar");
  }

  @Test
  void ofSeveralFittingsTheLastCounts() {
    Script both =
        new Script().with(Script.shut("fires-out", "trip", "quick-valve").points(20).within(10));
    Run run = new Run().cue(0);
    run.shut(100, "trip");
    run.shut(260, "quick-valve");
    assertThat(run.score(both).points()).isEqualTo(97);
    assertThat(run.score(both).steps().get(0).orders()).containsExactly(1, 2);
  }

  @Test
  void oneOrderMayWorkSeveralFittings() {
    Script both =
        new Script()
            .with(Script.shut("fires-out", "main-stop", "other-stop").points(20).within(10));
    Run run = new Run().cue(0);
    int n = run.say(100, "burnerman shut main-stop other-stop");
    run.moved(150, n, "main-stop", 0).moved(200, n, "other-stop", 0);
    assertThat(run.score(both).points()).isEqualTo(100);
    assertThat(run.score(both).steps().get(0).orders()).containsExactly(1);
  }

  @Test
  void whatADrilledManDoesUnorderedCountsFromWhenHeBeganAndAnyPlaceIsRight() {
    Script script =
        new Script().with(Script.shut("trip", "trip").points(20).within(10).side(Step.Side.REMOTE));
    Run run = new Run().cue(0);
    run.add(230, new Entry.Began(230, 0, "burnerman", "trip", TestShip.INSIDE));
    run.moved(250, 0, "trip", TestShip.INSIDE, 0);
    ScoreSheet sheet = run.score(script);
    assertThat(sheet.points()).isEqualTo(98);
    assertThat(sheet.steps().get(0).instantTick()).isEqualTo(230);
    assertThat(sheet.steps().get(0).orders()).isEmpty();
    assertThat(sheet.notes()).extracting(Note::text).contains("burnerman moved trip unordered");
  }

  @Test
  void aStandingOrderCountsThoughTheManWasQuickerUnordered() {
    Script script = new Script().with(Script.shut("trip", "trip").points(20).within(10));
    Run run = new Run().cue(0);
    run.say(200, 200, "burnerman trip trip");
    run.add(230, new Entry.Began(230, 0, "burnerman", "trip", TestShip.INSIDE));
    run.moved(250, 0, "trip", TestShip.INSIDE, 0);
    assertThat(run.score(script).points()).isEqualTo(100);
  }

  @Test
  void aProofCountsWhenItWasRead() {
    Script script = new Script().with(Script.proved("proved").points(20).within(10));
    Run run = new Run().cue(0);
    run.read(100, 5_000).read(150, 41_000).read(220, 4_999);
    ScoreSheet sheet = run.score(script);
    assertThat(sheet.points()).isEqualTo(99);
    assertThat(sheet.steps().get(0).instantTick()).isEqualTo(220);
  }

  @Test
  void aProofMustBeOfTheRightGauge() {
    Script script = new Script().with(Script.proved("proved").points(20));
    Run run = new Run().cue(0);
    run.add(100, new Entry.Reading(100, 0, "checkman", "level", 2_000));
    assertThat(run.score(script).steps().get(0).isDone()).isFalse();
  }

  /** A look before the fires are out proves nothing; the one after it does. */
  @Test
  void theReadingThatServesBestCounts() {
    Script script =
        new Script()
            .with(Script.shut("trip", "trip").points(10))
            .with(Script.proved("proved").points(10).after("trip", "O2"));
    Run run = new Run().cue(0);
    run.read(100, 2_000);
    run.shut(200, "trip");
    run.read(300, 2_000);
    ScoreSheet sheet = run.score(script);
    assertThat(sheet.points()).isEqualTo(100);
    assertThat(sheet.steps().get(1).instantTick()).isEqualTo(300);
  }

  /** There is a limit to the choices that are tried together; beyond it each is tried alone. */
  @Test
  void manyReadingsOfManyProofsAreStillScored() {
    Script script = new Script().with(Script.shut("trip", "trip").points(10));
    Run run = new Run().cue(0);
    for (int i = 0; i < 8; i++) {
      script.with(Script.shut("f" + i, "f" + i).points(1));
      script.with(Script.proved("proved-" + i).points(1).after("f" + i, "O2"));
      run.read(100 + 100 * i, 2_000);
      run.shut(150 + 100 * i, "f" + i);
    }
    run.shut(900, "trip");
    run.read(1_000, 2_000);
    assertThat(run.score(script).points()).isEqualTo(100);
  }

  @Test
  void aReportCountsWhenPassedToTheRightMan() {
    Script script =
        new Script().with(Script.reported("report", "what-is-wrong").points(20).within(10));
    Run run = new Run().cue(0);
    run.add(100, new Entry.Passed(100, 1, "what-is-wrong", "checkman"));
    run.add(150, new Entry.Passed(150, 2, "something-else", "watch-engineer"));
    run.report(230, "what-is-wrong");
    assertThat(run.score(script).points()).isEqualTo(98);
  }

  @Test
  void aCountCountsOnlyWhenNobodyIsMissing() {
    Script script = new Script().with(Script.counted("head-count").points(20).within(10));
    Run run = new Run().cue(0);
    run.counted(100, "checkman").counted(250, "");
    assertThat(run.score(script).points()).isEqualTo(97);
  }

  @Test
  void anOrderCountsWhenItIsGiven() {
    Script script =
        new Script().with(Script.ordered("clear", "everyone leave").points(20).within(10));
    Run run = new Run().cue(0);
    run.say(250, 230, "everyone   leave");
    run.say(900, "everyone leave");
    ScoreSheet sheet = run.score(script);
    assertThat(sheet.points()).isEqualTo(98);
    assertThat(sheet.steps().get(0))
        .isEqualTo(new StepResult("clear", true, 20, 2, 230, 250, 230, List.of(1)));
  }
}
