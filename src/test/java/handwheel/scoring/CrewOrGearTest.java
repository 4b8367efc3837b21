package handwheel.scoring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import handwheel.logbook.Entry;
import org.junit.jupiter.api.Test;

/** What crew or gear fails is nobody's lost point. Common practice, no source; own fixtures. */
final class CrewOrGearTest {
  private static final String SAID = "burnerman shut main-stop";
  private static final Script STOP =
      new Script().with(Script.shut("stop", "main-stop").points(20).within(10));

  private static Run refused(boolean isFault) {
    Run run = new Run().cue(0);
    return run.refused(250, run.say(200, 200, SAID), isFault);
  }

  @Test
  void afterAStuckValveTheFirstOrderCounts() {
    Run run = refused(true);
    run.moved(500, run.say(300, 300, "checkman shut main-stop"), "main-stop", 0);
    ScoreSheet sheet = run.score(STOP);
    assertThat(sheet.points()).isEqualTo(100);
    assertThat(sheet.notes())
        .extracting(Note::kind, Note::text)
        .containsExactly(tuple(Note.Kind.CREW_OR_GEAR, "burnerman: It will not turn."));
  }

  @Test
  void afterAnOrderRefusedForWhatItWasTheRightOneCounts() {
    Run run = refused(false);
    run.moved(500, run.say(300, 300, SAID), "main-stop", 0);
    assertThat(run.score(STOP).points()).isEqualTo(95);
  }

  @Test
  void anOrderCalledBackDoesNotCount() {
    Run run = new Run().cue(0);
    run.say(100, SAID);
    run.say(150, "belay burnerman");
    run.moved(500, run.say(300, 300, SAID), "main-stop", 0);
    assertThat(run.score(STOP).points()).isEqualTo(95);
  }

  /** The last order still open is stopped, not one that is done. */
  @Test
  void aBelayPassesOverWhatIsDone() {
    Run run = new Run().cue(0);
    run.say(100, SAID);
    run.shut(120, "trip");
    run.say(142, "burnerman go front");
    run.add(145, new Entry.Arrived(145, "burnerman", "front"));
    run.say(150, "belay burnerman");
    run.moved(500, run.say(300, 300, SAID), "main-stop", 0);
    assertThat(run.score(STOP).points()).isEqualTo(95);
  }

  @Test
  void twoBelaysStopTwoOrders() {
    Run run = new Run().cue(0);
    run.say(100, SAID);
    run.say(120, "burnerman look grating");
    run.say(150, "belay burnerman");
    run.say(160, "belay burnerman");
    run.moved(500, run.say(300, 300, SAID), "main-stop", 0);
    assertThat(run.score(STOP).points()).isEqualTo(95);
  }

  @Test
  void oneBelayStopsOnlyTheLastOrder() {
    Run run = new Run().cue(0);
    run.say(100, SAID);
    run.say(120, "burnerman look grating");
    run.say(150, "belay burnerman");
    run.moved(500, run.say(300, 300, "checkman shut main-stop"), "main-stop", 0);
    assertThat(run.score(STOP).points()).isEqualTo(100);
  }

  @Test
  void anOrderCountermandedDoesNotCount() {
    Run run = new Run().cue(0);
    run.say(100, SAID);
    run.say(150, "burnerman open main-stop");
    run.moved(500, run.say(300, 300, SAID), "main-stop", 0);
    assertThat(run.score(STOP).points()).isEqualTo(95);
  }

  @Test
  void sayingItAgainToAQuickerManCostsNothing() {
    Run run = new Run().cue(0);
    run.say(100, SAID);
    run.moved(500, run.say(300, 300, "checkman shut main-stop"), "main-stop", 0);
    assertThat(run.score(STOP).points()).isEqualTo(100);
  }

  @Test
  void anOrderOfAManWhoWasHurtFailedThroughCrew() {
    Run run = new Run().cue(0);
    run.say(100, SAID);
    run.person(150, "burnerman", "hurt");
    run.say(160, "belay burnerman");
    run.moved(500, run.say(300, 300, "checkman shut main-stop"), "main-stop", 0);
    assertThat(run.score(STOP).points()).isEqualTo(100);
  }

  @Test
  void theTimeAReaderCostIsNotTheTrainees() {
    Script proof = new Script().with(Script.proved("proved").points(20).within(10));
    Run run = new Run().cue(0);
    run.refused(150, run.say(100, "checkman read burner-line"), true);
    run.read(260, 2_000);
    assertThat(run.score(proof).points()).isEqualTo(100);
  }

  @Test
  void anEarlierReadingThatShowedItNotYetProvedIsNoExcuse() {
    Script proof = new Script().with(Script.proved("proved").points(20).within(10));
    assertThat(new Run().cue(0).read(100, 41_000).read(260, 2_000).score(proof).points())
        .isEqualTo(97);
  }

  @Test
  void aStepThatFailedTwiceThroughCrewOrGearIsNobodysFault() {
    Run run = refused(true);
    run.refused(400, run.say(300, "checkman shut main-stop"), true);
    ScoreSheet sheet = run.until(2_000).score(STOP);
    assertThat(sheet.points()).isEqualTo(100);
    assertThat(sheet.charges())
        .extracting(Charge::type, Charge::points)
        .containsExactly(tuple(ErrorClass.NO_FAULT, 0));
  }

  @Test
  void notOrderingAgainIsCharged() {
    ScoreSheet sheet = refused(true).until(2_000).score(STOP);
    assertThat(sheet.charges())
        .extracting(Charge::type, Charge::points)
        .containsExactly(tuple(ErrorClass.OMITTED, 20));
  }

  @Test
  void orderingAgainLongAfterwardsIsCharged() {
    Run run = refused(true);
    run.refused(900, run.say(800, "checkman shut main-stop"), true);
    assertThat(run.until(2_000).score(STOP).points()).isEqualTo(80);
  }

  @Test
  void aRunThatEndedBeforeAnybodyCouldOrderAgainIsNobodysFault() {
    assertThat(refused(true).until(449).score(STOP).points()).isEqualTo(100);
    assertThat(refused(true).until(451).score(STOP).points()).isEqualTo(80);
  }

  @Test
  void whatWasOrderedLateStaysLateThoughGearFailedIt() {
    Run run = new Run().cue(0);
    run.refused(350, run.say(300, 300, SAID), true);
    run.refused(450, run.say(400, "checkman shut main-stop"), true);
    ScoreSheet sheet = run.until(2_000).score(STOP);
    assertThat(sheet.charges())
        .extracting(Charge::type, Charge::points)
        .containsExactly(tuple(ErrorClass.LATE, 5));
  }

  @Test
  void aCriticalStepThatGearFailedDoesNotFailTheRun() {
    Script critical =
        new Script().with(Script.shut("stop", "main-stop").points(20).within(10).critical());
    Run run = refused(true);
    run.refused(400, run.say(300, "checkman shut main-stop"), true);
    ScoreSheet sheet = run.until(2_000).score(critical);
    assertThat(sheet.isPass()).isTrue();
    assertThat(sheet.critical())
        .extracting(CriticalAct::standing)
        .containsExactly(CriticalAct.Standing.NO_FAULT);
  }

  @Test
  void aRefusalOfOneFittingSaysNothingOfTheOther() {
    Script script = new Script().with(Script.shut("stop", "main-stop").points(20).within(10));
    Run run = new Run().cue(0);
    int n = run.say(100, "burnerman shut main-stop other-stop");
    run.add(150, new Entry.Refused(150, n, "burnerman", "other-stop", "It sticks.", false));
    run.moved(500, run.say(300, 300, SAID), "main-stop", 0);
    assertThat(run.score(script).points()).isEqualTo(100);
  }
}
