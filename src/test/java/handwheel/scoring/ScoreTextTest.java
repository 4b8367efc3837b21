package handwheel.scoring;

import static org.assertj.core.api.Assertions.assertThat;

import handwheel.casualty.Casualty;
import handwheel.logbook.Entry;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The sheet as people read it. */
final class ScoreTextTest {
  private static List<String> lines(Casualty casualty, Run run) {
    List<Entry> entries = run.entries();
    return ScoreText.lines(casualty, TestShip.SHIP, entries, run.score(casualty));
  }

  @Test
  void everySheetSaysDrillFirstAndWhoDecidesLast() {
    Random random = new Random(80);
    for (int i = 0; i < 300; i++) {
      AnyRun any = new AnyRun(random);
      Run run = any.run().person(700, "checkman", "down").broke(500, 1, "n0");
      List<String> lines = lines(any.casualty, run);
      assertThat(lines.get(0)).startsWith("DRILL");
      assertThat(lines.get(lines.size() - 1)).isEqualTo("The machine advises; the board decides.");
      assertThat(lines).allMatch(l -> l.length() <= 80).noneMatch(l -> l.endsWith(" "));
      assertThat(lines).as("no colour").noneMatch(l -> l.indexOf('\u001b') >= 0);
    }
  }

  @Test
  void criticalActsComeFirstAndPointsLast() {
    List<String> lines = lines(EightActs.CASUALTY, EightActs.run(EightActs.IN_ORDER));
    assertThat(lines)
        .containsExactly(
            "DRILL - score sheet - test-casualty: Trouble",
            "Times are minutes:seconds from the first cue; a tick is 0.05 s.",
            "",
            "Critical acts",
            "  This script has none.",
            "",
            "People and what followed (told here, not charged again)",
            "  0 hurt, 0 down.",
            "",
            "Lost points",
            "  None.",
            "",
            "Points",
            "  100 of 100, 80 to pass: PASS.",
            "",
            "The machine advises; the board decides.");
  }

  @Test
  void aLostPointSaysWhenWhatWhyOnWhatGroundAndWhere() {
    Script script =
        new Script()
            .with(Script.shut("trip", "trip").points(15).critical())
            .with(Script.shut("stop", "main-stop").points(15).after("trip", "O2"));
    Run run = new Run().cue(400);
    run.add(0, new Entry.Run(1, "0.1.0", "test-ship", "00", "test-casualty", "00", 7, "scored"));
    run.shut(1_500, "main-stop");
    run.plant(1_520, "Safety valve lifts");
    run.shut(1_700, "trip");
    assertThat(lines(script.casualty(), run))
        .contains(
            "Ship test-ship, seed 7, mode scored, engine 0.1.0.",
            "  met       trip at 1:05 (tick 1700): done as it should be",
            "  0:56 (tick 1520) Safety valve lifts (after stop)")
        .containsSequence(
            "  -15  stop: early, at 0:55 (tick 1500)",
            "       Done before `trip`, which must come first (rule O2). Should have been:",
            "       main-stop shut. Because of stop. Rule O2.",
            "       Reading: stop 10 s before trip.",
            "       Basis: trade-rule. Script: test.yaml:2:5.");
  }

  @Test
  void whatIsBeforeTheFirstCueHasAMinusSign() {
    Run run = new Run().cue(400);
    run.plant(100, "The blower note drops");
    assertThat(lines(EightActs.CASUALTY, run)).contains("  -0:15 (tick 100) The blower note drops");
  }

  @Test
  void crewAndGearAndRemarksStandApart() {
    Script script = new Script().with(Script.shut("stop", "main-stop").points(15).critical());
    Run run = new Run().cue(0);
    run.refused(250, run.say(200, "burnerman shut main-stop"), true);
    run.moved(400, run.say(300, "checkman shut main-stop"), "main-stop", 0);
    run.open(500, "main-stop");
    assertThat(lines(script.casualty(), run))
        .containsSequence(
            "Crew and gear (nobody's points)", "  0:12 (tick 250) burnerman: It will not turn.")
        .containsSequence("Remarks", "  0:26 (tick 520) main-stop was moved again afterwards");
  }

  @Test
  void aFailureIsCountedBesideThePoints() {
    Script script = new Script().with(Script.shut("stop", "main-stop").points(15).critical());
    assertThat(lines(script.casualty(), new Run().cue(0).until(40)))
        .contains("  NOT MET   stop at 0:02 (tick 40): Not done: main-stop shut")
        .contains("  85 of 100, 80 to pass: FAIL. 1 critical act not met.");
  }

  @Test
  void aWordTooWideForTheScreenIsCut() {
    Columns columns = new Columns();
    columns.add("  ", 4, "a " + "b".repeat(200));
    assertThat(columns.lines()).hasSize(4).allMatch(l -> l.length() <= 80);
    assertThat(String.join("", columns.lines()).replace(" ", "")).isEqualTo("a" + "b".repeat(200));
  }
}
