package handwheel.app;

import static org.assertj.core.api.Assertions.assertThat;

import handwheel.drill.Mode;
import handwheel.logbook.Entry;
import handwheel.proof.WitnessPlayer;
import handwheel.screen.Desk;
import handwheel.screen.Frame;
import handwheel.screen.Key;
import handwheel.screen.LineDesk;
import handwheel.screen.Script;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The modes: what a learner is offered, and what nobody is offered in a run that counts. */
final class LearnTest {
  private static final Pattern NEXT = Pattern.compile("Next: ([a-z0-9 %-]+)");

  private final List<Entry> entries = new ArrayList<>();

  private Desk begun(Mode mode) {
    Desk desk = new Desk(script(mode));
    Shipped.STEAM_LEAK.casualty().cautions().forEach(c -> desk.press(Key.of(Key.Kind.ENTER)));
    desk.press(Key.of(Key.Kind.ENTER));
    return desk;
  }

  private Script script(Mode mode) {
    var found = Shipped.STEAM_LEAK;
    return new Script(
        found,
        1,
        mode,
        entries::add,
        Optional.of(new WitnessPlayer(found.casualty(), found.ship())));
  }

  private static String text(Desk desk) {
    StringBuilder text = new StringBuilder();
    for (Frame.Row row : desk.frame(80, 24).rows()) {
      text.append(row.text().strip()).append(' ');
    }
    return text.toString();
  }

  private static void type(Desk desk, String text) {
    text.chars().forEach(c -> desk.press(Key.letter((char) c)));
  }

  /** Reads the screen, types the order it offers, reads the caution, types Enter: no other help. */
  @Test
  void theSteamLeakIsPassedWithNoHelpButTheSmallestScreen() {
    Desk desk = begun(Mode.LEARN);
    int cautions = 0;
    for (int second = 0; second < 480 && !desk.watch().orElseThrow().isOver(); second++) {
      desk.pass(20);
      Matcher offered = NEXT.matcher(text(desk));
      if (offered.find()) {
        type(desk, offered.group(1));
        desk.press(Key.of(Key.Kind.ENTER));
        while (text(desk).contains("The same again gives the order")) {
          cautions++;
          desk.press(Key.of(Key.Kind.ENTER));
        }
      }
    }
    assertThat(desk.watch().orElseThrow().result()).contains("DRILL over: 100 of 100, PASS.");

    assertThat(cautions).isEqualTo(3);
  }

  @Test
  void theCautionStandsBeforeTheLeverAndClearingTheLineGivesNothing() {
    Desk desk = begun(Mode.LEARN);
    desk.pass(20);
    type(desk, "mss");
    desk.press(Key.of(Key.Kind.ENTER));
    desk.pass(1);
    assertThat(text(desk)).contains("DANGER: Superheated steam");
    assertThat(entries).noneMatch(Entry.OrderSaid.class::isInstance);
    desk.press(Key.of(Key.Kind.ESCAPE));
    type(desk, "mss");
    desk.press(Key.of(Key.Kind.ENTER));
    desk.pass(1);
    assertThat(text(desk)).contains("DANGER: Superheated steam");
    assertThat(entries).noneMatch(Entry.OrderSaid.class::isInstance);
  }

  @Test
  void practiceGivesAHintOnRequestAndStandsStillInSight() {
    Desk desk = begun(Mode.PRACTICE);
    desk.pass(63 * 20);
    assertThat(text(desk)).doesNotContain("Next: ");
    type(desk, "+");
    assertThat(text(desk)).contains("Next: everyone leave");
    type(desk, ".");
    long stood = desk.watch().orElseThrow().now();
    desk.pass(100);
    assertThat(desk.watch().orElseThrow().now()).isEqualTo(stood);
    assertThat(text(desk)).contains("drum pressure").contains("stands still");
    desk.press(Key.of(Key.Kind.ENTER));
    desk.pass(100);
    assertThat(desk.watch().orElseThrow().now()).isEqualTo(stood + 100);
    assertThat(entries).anyMatch(Entry.Stopped.class::isInstance);
    assertThat(entries).anyMatch(Entry.Resumed.class::isInstance);
  }

  @Test
  void aRunThatCountsOffersNothingAndPutsNothingBeforeTheLever() {
    Desk desk = begun(Mode.SCORED);
    desk.pass(63 * 20);
    type(desk, "+.");
    desk.pass(20);
    assertThat(text(desk)).doesNotContain("Next: ");
    assertThat(entries).noneMatch(Entry.Stopped.class::isInstance);
    desk.press(Key.of(Key.Kind.ESCAPE));
    type(desk, "mss");
    desk.press(Key.of(Key.Kind.ENTER));
    desk.pass(1);
    assertThat(entries).anyMatch(Entry.OrderSaid.class::isInstance);
  }

  @Test
  void theLinesSayTheSame() {
    LineDesk desk = new LineDesk(script(Mode.LEARN));
    List<String> out = new ArrayList<>();
    desk.begin(out::add);
    for (int i = 0; i < 3; i++) {
      desk.typed("ok", out::add);
    }
    desk.pass(63 * 20, out::add);
    assertThat(out).anyMatch(l -> l.startsWith("Next: everyone leave"));
    desk.typed("gg", out::add);
    assertThat(out.get(out.size() - 1)).startsWith("DANGER: ");
    desk.typed("gg", out::add);
    desk.pass(1, out::add);
    assertThat(entries).anyMatch(Entry.OrderSaid.class::isInstance);
  }
}
