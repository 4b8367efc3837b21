package handwheel.app;

import static org.assertj.core.api.Assertions.assertThat;

import handwheel.drill.Mode;
import handwheel.logbook.ChainedEntries;
import handwheel.logbook.Entry;
import handwheel.screen.Desk;
import handwheel.screen.Frame;
import handwheel.screen.Key;
import handwheel.screen.PipeDesk;
import handwheel.screen.Script;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The faces of the shipped drill: frames as text, keys, the line mode, the same score. */
class FacesTest {
  private static final int TICKS_PER_S = 20;

  private final List<Entry> entries = new ArrayList<>();

  private Script script(long seed) {
    return new Script(Shipped.STEAM_LEAK, seed, Mode.PRACTICE, entries::add);
  }

  @Test
  void theFramesAreAsApproved() throws IOException {
    Desk desk = new Desk(script(1));
    approve("caution-80x24", desk.frame(80, 24));
    acknowledge(desk);
    approve("brief-80x24", desk.frame(80, 24));
    press(desk, Key.Kind.ENTER);
    desk.pass(TICKS_PER_S);
    approve("steady-80x24", desk.frame(80, 24));
    approve("steady-120x40", desk.frame(120, 40));
    desk.pass(53 * TICKS_PER_S);
    type(desk, "gg");
    press(desk, Key.Kind.ENTER);
    approve("roar-100x30", desk.frame(100, 30));
    approve("roar-160x50", desk.frame(160, 50));
    type(desk, "xx");
    approve("typing-80x24", desk.frame(80, 24));
    press(desk, Key.Kind.ENTER);
    desk.pass(10 * TICKS_PER_S);
    approve("outside-80x24", desk.frame(80, 24));
    approve("small-60x20", desk.frame(60, 20));
    press(desk, Key.letter('?'));
    approve("help-80x24", desk.frame(80, 24));
    press(desk, Key.letter(' '));
    type(desk, "!!");
    approve("stopped-80x24", desk.frame(80, 24));
  }

  private static void acknowledge(Desk desk) {
    Shipped.STEAM_LEAK.casualty().cautions().forEach(c -> press(desk, Key.Kind.ENTER));
  }

  private static void type(Desk desk, String text) {
    text.chars().forEach(c -> press(desk, Key.letter((char) c)));
  }

  private static void press(Desk desk, Key.Kind kind) {
    desk.press(Key.of(kind));
  }

  private static void press(Desk desk, Key key) {
    desk.press(key);
  }

  private static void approve(String name, Frame frame) throws IOException {
    String text =
        frame.rows().stream().map(r -> r.text().stripTrailing()).collect(Collectors.joining("\n"))
            + "\n";
    Path golden = Path.of("src/test/resources/frames", name + ".txt");
    if (Boolean.getBoolean("golden.update")) {
      Files.createDirectories(golden.getParent());
      Files.writeString(golden, text);
    }
    assertThat(text).as(name).isEqualTo(Files.readString(golden));
    assertThat(frame.rows().get(0).text()).startsWith("DRILL");
  }

  @Test
  void noSessionRunsBeforeTheCautionsAreAcknowledged() {
    Desk desk = new Desk(script(1));
    desk.pass(100);
    type(desk, "xx");
    assertThat(desk.watch()).isEmpty();
    assertThat(entries).isEmpty();
    acknowledge(desk);
    press(desk, Key.Kind.ENTER);
    assertThat(entries.stream().filter(Entry.CautionShown.class::isInstance)).hasSize(3);
  }

  @Test
  void theFirstKeyIsTheInstantOfAnOrder() {
    Desk desk = new Desk(script(1));
    acknowledge(desk);
    press(desk, Key.Kind.ENTER);
    desk.pass(10);
    type(desk, "every");
    desk.pass(30);
    type(desk, " l");
    press(desk, Key.Kind.ENTER);
    desk.pass(1);
    Entry.OrderSaid said =
        (Entry.OrderSaid)
            entries.stream().filter(Entry.OrderSaid.class::isInstance).findFirst().orElseThrow();
    assertThat(said.say()).isEqualTo("everyone leave");
    assertThat(said.from()).isEqualTo(10);
    assertThat(said.t()).isEqualTo(40);
  }

  @Test
  void aStoppedDrillStandsStillAndGoesOn() {
    Desk desk = new Desk(script(1));
    acknowledge(desk);
    press(desk, Key.Kind.ENTER);
    type(desk, "!!");
    // The stop is in the record at once, which takes the one tick it takes effect at.
    assertThat(entries).anyMatch(Entry.Stopped.class::isInstance);
    desk.pass(100);
    assertThat(desk.watch().orElseThrow().now()).isEqualTo(1);
    press(desk, Key.Kind.ENTER);
    desk.pass(100);
    assertThat(desk.watch().orElseThrow().now()).isEqualTo(101);
    assertThat(entries).anyMatch(Entry.Resumed.class::isInstance);
    type(desk, "!!!");
    assertThat(desk.isLeft()).isTrue();
  }

  @Test
  void theLineModeGivesTheSameRunAsARehearsal() {
    var witness = Shipped.witness(1);
    PipeDesk desk = new PipeDesk(script(1));
    List<String> out = new ArrayList<>();
    desk.take("", out::add);
    for (Entry e : witness.entries()) {
      if (e instanceof Entry.OrderSaid o) {
        desk.take(o.t() / 20.0 + " " + o.say(), out::add);
      }
    }
    desk.finish(out::add);
    assertThat(ChainedEntries.digestOf(entries))
        .isEqualTo(ChainedEntries.digestOf(witness.entries()));
    assertThat(out.get(0)).startsWith("DRILL");
    assertThat(out).anyMatch(l -> l.contains("A roar overhead"));
    assertThat(out).anyMatch(l -> l.contains("100 of 100"));
  }

  @Test
  void hostileTextNeverReachesTheTerminal() {
    PipeDesk desk = new PipeDesk(script(1));
    List<String> out = new ArrayList<>();
    desk.take("", out::add);
    desk.take("\u001b[2Jcheckman \u0007", out::add);
    assertThat(String.join("", out)).doesNotContain("\u001b").doesNotContain("\u0007");
  }
}
