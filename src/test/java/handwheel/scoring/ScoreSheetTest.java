package handwheel.scoring;

import static org.assertj.core.api.Assertions.assertThat;

import handwheel.logbook.Entry;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The sheet as a line of the record. */
final class ScoreSheetTest {
  @Test
  void aFullScoreHasNoLosses() {
    assertThat(EightActs.score(EightActs.IN_ORDER).toEntry())
        .isEqualTo(new Entry.Score(100, "pass", List.of()));
  }

  @Test
  void everyChargeIsALoss() {
    Script script =
        new Script().with(Script.shut("stop", "main-stop").points(15).within(10).critical());
    Run run = new Run().cue(0);
    run.moved(300, run.say(230, 230, "burnerman shut main-stop"), "main-stop", 0);
    Entry.Score score = run.score(script).toEntry();
    assertThat(score.points()).isEqualTo(98);
    assertThat(score.verdict()).isEqualTo("fail");
    assertThat(score.lost())
        .containsExactly(
            new Entry.Loss(
                2,
                "late",
                "stop",
                230,
                "Came 1.5 s late, allowed: begun within 10 s of roar. Should have been: main-stop"
                    + " shut, begun within 10 s of roar. Because of stop. Rule O2.",
                "trade-rule"));
  }

  @Test
  void everyErrorClassHasItsWord() {
    assertThat(ErrorClass.values())
        .extracting(ErrorClass::word)
        .containsExactly(
            "omitted",
            "late",
            "early",
            "out-of-order",
            "wrong-fitting",
            "wrong-way",
            "wrong-place",
            "partial",
            "unsafe",
            "not-reported",
            "not-confirmed",
            "harm",
            "no-fault");
  }
}
