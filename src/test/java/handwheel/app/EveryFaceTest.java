package handwheel.app;

import static org.assertj.core.api.Assertions.assertThat;

import handwheel.app.WitnessRuns.WitnessRun;
import handwheel.drill.Mode;
import handwheel.logbook.ChainedEntries;
import handwheel.logbook.Entry;
import handwheel.screen.Desk;
import handwheel.screen.Frame;
import handwheel.screen.Key;
import handwheel.screen.PipeDesk;
import handwheel.screen.Script;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every witness of every drill, played by keys on the full screen and as lines: the same record to
 * the bit, so the same score; every sentence heard stands in both; what ASCII and a screen without
 * styles show is the same text.
 */
final class EveryFaceTest {
  private static final int LOG_WIDTH = 200;
  private static final int LOG_HEIGHT = 60;

  static List<WitnessRun> runs() throws Exception {
    return WitnessRuns.all().toList();
  }

  @ParameterizedTest
  @MethodSource("runs")
  void theFullScreenAndTheLinesGiveTheSameRecordAndTellTheSame(WitnessRun witness) {
    List<String> lines = new ArrayList<>();
    List<Entry> byLines = new ArrayList<>();
    lined(witness, byLines, lines);
    TreeSet<String> seen = new TreeSet<>();
    List<Entry> byKeys = new ArrayList<>();
    keyed(witness, byKeys, seen);
    Optional<String> expected = ChainedEntries.digestOf(witness.run().entries());
    assertThat(expected).isPresent();
    assertThat(ChainedEntries.digestOf(byLines)).isEqualTo(expected);
    assertThat(ChainedEntries.digestOf(byKeys)).isEqualTo(expected);
    List<String> heard = lines.stream().filter(EveryFaceTest::isHeard).toList();
    assertThat(heard).isNotEmpty();
    assertThat(seen).containsAll(heard.stream().filter(l -> l.length() < LOG_WIDTH).toList());
  }

  /** A sentence that was heard begins with its time. */
  private static boolean isHeard(String line) {
    return line.matches("\\d+:\\d\\d .*");
  }

  private static void lined(WitnessRun witness, List<Entry> entries, List<String> out) {
    PipeDesk desk = new PipeDesk(script(witness, entries));
    desk.take("", out::add);
    for (Entry.OrderSaid o : witness.orders()) {
      desk.take(o.t() / 20.0 + " " + o.say(), out::add);
    }
    desk.finish(out::add);
  }

  private static Script script(WitnessRun witness, List<Entry> entries) {
    return new Script(witness.found(), WitnessRuns.SEED, Mode.PRACTICE, entries::add);
  }

  private static void keyed(WitnessRun witness, List<Entry> entries, Set<String> seen) {
    Desk desk = new Desk(script(witness, entries));
    while (desk.watch().isEmpty()) {
      desk.press(Key.of(Key.Kind.ENTER));
    }
    for (Entry.OrderSaid o : witness.orders()) {
      until(desk, o.t(), seen);
      o.say().chars().forEach(c -> desk.press(Key.letter((char) c)));
      desk.press(Key.of(Key.Kind.ENTER));
    }
    until(desk, Long.MAX_VALUE, seen);
    assertThat(text(desk)).contains("DRILL");
  }

  private static void until(Desk desk, long tick, Set<String> seen) {
    while (!desk.watch().orElseThrow().isOver() && desk.watch().orElseThrow().now() < tick) {
      desk.pass(1);
      if (desk.watch().orElseThrow().now() % 10 == 0) {
        look(desk, seen);
      }
    }
    look(desk, seen);
  }

  private static void look(Desk desk, Set<String> seen) {
    Frame frame = desk.frame(LOG_WIDTH, LOG_HEIGHT);
    assertThat(frame.rows().get(0).text()).startsWith("DRILL");
    Frame ascii = frame.ascii();
    for (int row = 0; row < frame.rows().size(); row++) {
      assertThat(words(ascii.rows().get(row))).isEqualTo(words(frame.rows().get(row)));
    }
    frame.rows().forEach(r -> seen.add(r.text().stripTrailing()));
  }

  /** Letters, figures and stops of a row: what it tells, without lines and needles. */
  private static String words(Frame.Row row) {
    return row.text().replaceAll("[^A-Za-z0-9.,;%:?!()/]", "").replace(":", "");
  }

  private static String text(Desk desk) {
    return desk.frame(80, 24).rows().stream().map(Frame.Row::text).collect(Collectors.joining());
  }
}
