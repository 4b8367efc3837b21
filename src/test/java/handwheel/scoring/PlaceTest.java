package handwheel.scoring;

import static org.assertj.core.api.Assertions.assertThat;

import handwheel.casualty.Never;
import handwheel.casualty.Step;
import handwheel.logbook.Entry;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Where an act is done: local while that is safe, remote when it is not. Common practice, no
 * source; the band is ours: unsafe below {@code need}, either side up to twice {@code need}.
 */
final class PlaceTest {
  private static Script script(Step.Side side) {
    return new Script()
        .with(Script.shut("stop", "main-stop").points(15).critical().side(side))
        .pass(0);
  }

  private static ScoreSheet work(Script script, String at, long hurtTicks) {
    Run run = new Run().cue(0);
    int n = run.say(run.at(100, "burnerman shut main-stop", 200, hurtTicks));
    return run.moved(400, n, "main-stop", at, 0).score(script);
  }

  @ParameterizedTest
  @CsvSource({
    "LOCAL,  front,          1000000, 100",
    "LOCAL,  front,          200,     100",
    "LOCAL,  front,          199,     85",
    "REMOTE, remote-station, 1000000, 100",
    "REMOTE, grating,        1000000, 92",
    "REMOTE, grating,        300,     100",
    "REMOTE, remote-station, 100,     85",
  })
  void earnsAllHalfOrNothing(Step.Side side, String at, long hurtTicks, int points) {
    assertThat(work(script(side), at, hurtTicks).points()).isEqualTo(points);
  }

  /**
   * From outside though the script says local: what counts is what a man inside could have done.
   */
  private static ScoreSheet remote(long insideHurtTicks) {
    Run run = new Run().cue(0);
    int n = run.say(run.at(100, "burnerman shut main-stop", 200, Entry.NO_HURT_TICKS));
    run.add(100, new Entry.Inside(100, n, "checkman", 100, insideHurtTicks));
    return run.moved(400, n, "main-stop", "remote-station", 0).score(script(Step.Side.LOCAL));
  }

  @ParameterizedTest
  @CsvSource({"1000000, 92", "200, 92", "199, 100", "50, 100"})
  void outsideIsRightWhereInsideIsNotSafe(long insideHurtTicks, int points) {
    assertThat(remote(insideHurtTicks).points()).isEqualTo(points);
  }

  @Test
  void outsideIsRightWhereNobodyIsInside() {
    assertThat(work(script(Step.Side.LOCAL), "remote-station", 1_000_000).points()).isEqualTo(100);
  }

  @Test
  void theWrongSideIsNoCriticalFailure() {
    ScoreSheet sheet = remote(Entry.NO_HURT_TICKS);
    Charge charge = sheet.charges().get(0);
    assertThat(charge.type()).isEqualTo(ErrorClass.WRONG_PLACE);
    assertThat(charge.isCritical()).isFalse();
    assertThat(charge.reading()).isEqualTo("needs 10 s, nobody is hurt there");
    assertThat(sheet.isPass()).isTrue();
  }

  @Test
  void anUnsafePlaceIsACriticalFailure() {
    ScoreSheet sheet = work(script(Step.Side.LOCAL), "front", 150);
    Charge charge = sheet.charges().get(0);
    assertThat(charge.type()).isEqualTo(ErrorClass.UNSAFE);
    assertThat(charge.isCritical()).isTrue();
    assertThat(charge.reading()).isEqualTo("needs 10 s, a man there is hurt after 7.5 s");
    assertThat(sheet.isPass()).isFalse();
  }

  @Test
  void theScriptsPlaceNeverMakesAnUnsafeOneRight() {
    assertThat(work(script(Step.Side.REMOTE), "remote-station", 199).points()).isEqualTo(85);
  }

  @Test
  void theJetIsUnsafeWhateverTheTimes() {
    Run run = new Run().cue(0);
    String order = "burnerman shut main-stop";
    int n = run.say(new Entry.OrderSaid(100, 90, 1, order, 20, Entry.NO_HURT_TICKS, true));
    ScoreSheet sheet = run.moved(200, n, "main-stop", "front", 0).score(script(Step.Side.LOCAL));
    assertThat(sheet.charges().get(0).type()).isEqualTo(ErrorClass.UNSAFE);
    assertThat(sheet.charges().get(0).reading()).isEqualTo("in a jet of steam");
  }

  @Test
  void withoutAPlaceInTheScriptEitherSideIsRight() {
    Script script = new Script().with(Script.shut("stop", "main-stop").points(15));
    assertThat(work(script, "front", Entry.NO_HURT_TICKS).points()).isEqualTo(100);
    assertThat(work(script, "remote-station", Entry.NO_HURT_TICKS).points()).isEqualTo(100);
    assertThat(work(script, "remote-station", 10).points()).isEqualTo(85);
  }

  @Test
  void lateAndOnTheWrongSideTogetherCostAtMostWhatTheStepIsWorth() {
    Script script =
        new Script()
            .with(Script.shut("stop", "main-stop").points(15).within(0).side(Step.Side.LOCAL));
    Run run = new Run().cue(0);
    int n = run.say(run.at(100, "burnerman shut main-stop", 20, Entry.NO_HURT_TICKS));
    run.add(100, new Entry.Inside(100, n, "checkman", 20, Entry.NO_HURT_TICKS));
    ScoreSheet sheet = run.moved(200, n, "main-stop", "remote-station", 0).score(script);
    assertThat(sheet.charges()).extracting(Charge::points).containsExactly(8, 5);
    Run later = new Run().cue(0);
    int m = later.say(later.at(900, "burnerman shut main-stop", 20, Entry.NO_HURT_TICKS));
    later.add(900, new Entry.Inside(900, m, "checkman", 20, Entry.NO_HURT_TICKS));
    ScoreSheet all = later.moved(990, m, "main-stop", "remote-station", 0).score(script);
    assertThat(all.charges()).extracting(Charge::points).containsExactly(8, 7);
  }

  @Test
  void readingAndReportingAreNotJudgedByPlace() {
    Script script =
        new Script()
            .with(Script.proved("proved").points(10).side(Step.Side.LOCAL))
            .with(Script.ordered("look", "checkman look front").points(10));
    Run run = new Run().cue(0);
    int n = run.say(run.at(100, "checkman read burner-line", 200, 10));
    run.add(150, new Entry.Reading(150, n, "checkman", "burner-line", 2_000));
    run.say(run.at(200, "checkman look front", 200, 10));
    assertThat(run.score(script).points()).isEqualTo(100);
  }

  @Test
  void sendingAManIsJudgedByPlace() {
    Script script = new Script().with(Script.ordered("send", "remote-hand go grating").points(10));
    Run run = new Run().cue(0);
    run.say(run.at(100, "remote-hand go grating", 200, 10));
    assertThat(run.score(script).charges())
        .extracting(Charge::type)
        .containsExactly(ErrorClass.UNSAFE);
  }

  /** One order, one mistake: the rule against being sent there takes the place of the charge. */
  @Test
  void aRuleAgainstBeingSentThereReplacesTheChargeForThePlace() {
    Script script =
        script(Step.Side.LOCAL)
            .never("into-the-jet", new Never.Sending("anyone", List.of("grating")), 20, false);
    Run run = new Run().cue(0);
    int n = run.say(run.at(100, "burnerman shut main-stop", 200, 100));
    run.broke(100, n, "into-the-jet").moved(400, n, "main-stop", "front", 0);
    ScoreSheet sheet = run.score(script);
    assertThat(sheet.points()).isEqualTo(80);
    assertThat(sheet.critical().get(0).isFailure()).as("still not met").isTrue();
    Optional<Charge> untold =
        sheet.charges().stream().filter(c -> c.step().equals("stop")).findFirst();
    assertThat(untold).get().satisfies(c -> assertThat(c.points()).isZero());
  }
}
