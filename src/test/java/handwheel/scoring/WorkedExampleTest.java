package handwheel.scoring;

import static org.assertj.core.api.Assertions.assertThat;

import handwheel.casualty.Casualty;
import handwheel.casualty.Step;
import handwheel.logbook.Entry;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The worked example of docs/scoring.md: what the page says is what the program says. */
final class WorkedExampleTest {
  private static final Casualty CASUALTY =
      new Script()
          .named("example", "Trouble overhead")
          .with(
              Script.ordered("clear", "everyone leave")
                  .points(20)
                  .within(15)
                  .critical()
                  .rule("")
                  .why("The upper level hurts within half a minute."))
          .with(
              Script.shut("fires-out", "trip")
                  .points(25)
                  .within(20)
                  .side(Step.Side.LOCAL)
                  .why("Fires out comes before everything that is done to the steam."))
          .with(
              Script.reported("report", "what-is-wrong")
                  .points(15)
                  .within(40)
                  .rule("")
                  .why("Nobody outside can help before he is told."))
          .with(
              Script.proved("proved")
                  .points(15)
                  .within(90)
                  .after("fires-out", "O2")
                  .why("A pulled trip is not a shut valve."))
          .with(
              Script.shut("main-stop", "main-stop")
                  .points(25)
                  .within(90)
                  .critical()
                  .side(Step.Side.REMOTE)
                  .after("proved", "O2")
                  .why("Shut on fire it starves the superheater."))
          .casualty();

  private static Run run() {
    Run run = new Run().cue(600);
    run.say(660, 640, "everyone leave");
    int trip = run.say(run.at(720, "remote-hand trip trip", 100, Entry.NO_HURT_TICKS));
    run.add(720, new Entry.Inside(720, trip, "burnerman", 40, Entry.NO_HURT_TICKS));
    run.moved(820, trip, "trip", TestShip.OUTSIDE, 0);
    int misheard = run.say(1_000, "remote-hand shut main-stop");
    run.repeated(1_040, misheard, "remote-hand", "remote-hand shut other-stop");
    run.say(1_060, "belay remote-hand");
    int stop = run.say(1_100, "remote-hand shut main-stop");
    run.report(1_530, "what-is-wrong");
    run.plant(1_700, "Safety valve lifts");
    run.read(1_800, 1_200);
    return run.moved(2_900, stop, "main-stop", 0).until(3_600);
  }

  @Test
  void thePageShowsTheSheet() throws IOException {
    ScoreSheet sheet = run().score(CASUALTY);
    String text =
        String.join("\n", ScoreText.lines(CASUALTY, TestShip.SHIP, run().entries(), sheet));
    String page = Files.readString(Path.of("docs/scoring.md"), StandardCharsets.UTF_8);
    assertThat(page).contains("```text\n" + text + "\n```\n");
  }

  @Test
  void theSumsOfThePageAreRight() {
    ScoreSheet sheet = run().score(CASUALTY);
    assertThat(sheet.charges()).extracting(Charge::points).containsExactly(13, 7, 15);
    assertThat(sheet.points()).isEqualTo(65);
    assertThat(sheet.isPass()).isFalse();
    assertThat(sheet.steps().get(4).instantTick()).as("the misheard order counts").isEqualTo(1_000);
  }
}
