package handwheel.scoring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import org.junit.jupiter.api.Test;

/** Properties 10 and 11 of a fair scorer: own fixtures. */
final class OneMistakeOneChargeTest {
  private static final Script SCRIPT =
      new Script()
          .with(Script.shut("fires-out", "trip").points(30).within(10))
          .with(Script.shut("stop", "main-stop").points(20).after("fires-out", "O2"));

  /** Property 10: what follows from a mistake is told with it and not charged again. */
  @Test
  void upsetsAreToldAndNotCharged() {
    Run run = new Run().cue(0);
    run.shut(300, "trip");
    run.plant(320, "Safety valve lifts").plant(340, "Superheater overheats");
    run.shut(400, "main-stop");
    ScoreSheet sheet = run.score(SCRIPT);
    assertThat(sheet.charges()).hasSize(1);
    assertThat(sheet.points()).isEqualTo(95);
    assertThat(sheet.notes())
        .extracting(Note::kind, Note::step, Note::text)
        .containsExactly(
            tuple(Note.Kind.PLANT, "fires-out", "Safety valve lifts"),
            tuple(Note.Kind.PLANT, "fires-out", "Superheater overheats"));
  }

  /** Property 11: shutting at the wrong moment is not undone by opening and shutting again. */
  @Test
  void flailingIsNotRewarded() {
    Run flailing = new Run().cue(0);
    flailing.shut(60, "main-stop");
    flailing.open(90, "main-stop");
    flailing.shut(120, "trip");
    flailing.shut(150, "main-stop");
    Run early = new Run().cue(0);
    early.shut(60, "main-stop");
    early.shut(120, "trip");
    assertThat(flailing.score(SCRIPT).points()).isEqualTo(early.score(SCRIPT).points());
    assertThat(flailing.score(SCRIPT).charges())
        .extracting(Charge::step, Charge::type)
        .containsExactly(tuple("stop", ErrorClass.EARLY));
  }

  /** Property 11: where it ends is not what counts. */
  @Test
  void theStatesCountInTheirOrderNotTheLastOne() {
    Script open = new Script().with(Script.open("vent", "vent").points(10).within(5));
    Run run = new Run().cue(0);
    run.open(60, "vent");
    run.shut(90, "vent");
    run.open(800, "vent");
    ScoreSheet sheet = run.score(open);
    assertThat(sheet.points()).isEqualTo(100);
    assertThat(sheet.notes()).extracting(Note::text).contains("vent was moved again afterwards");
  }

  @Test
  void repeatsAfterSuccessAreFree() {
    Run run = new Run().cue(0);
    run.shut(60, "trip");
    run.shut(90, "main-stop");
    run.shut(500, "trip");
    run.shut(900, "main-stop");
    assertThat(run.score(SCRIPT).points()).isEqualTo(100);
  }

  @Test
  void harmlessExtrasAreFree() {
    Run run = new Run().cue(0);
    run.open(20, "vent");
    run.shut(60, "trip");
    run.shut(70, "other-stop");
    run.shut(90, "main-stop");
    assertThat(run.score(SCRIPT).points()).isEqualTo(100);
  }

  /** A late act done after its successor as well: the larger of the two charges, not both. */
  @Test
  void lateAndOutOfOrderIsChargedOnce() {
    Script script =
        new Script()
            .with(Script.shut("fires-out", "trip").points(30).within(10))
            .with(Script.shut("stop", "main-stop").points(20).after("fires-out", "O2"))
            .with(Script.shut("other", "other-stop").points(20).after("fires-out", "O2"));
    Run run = new Run().cue(0);
    run.shut(60, "main-stop");
    run.shut(80, "other-stop");
    run.shut(300, "trip");
    ScoreSheet sheet = run.score(script);
    assertThat(sheet.charges())
        .singleElement()
        .satisfies(c -> assertThat(c.step()).isEqualTo("fires-out"))
        .satisfies(c -> assertThat(c.points()).isEqualTo(30));
  }
}
