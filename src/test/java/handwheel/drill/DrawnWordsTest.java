package handwheel.drill;

import static org.assertj.core.api.Assertions.assertThat;

import handwheel.logbook.Entry;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Words drawn for each run lead into the phase that was drawn. */
final class DrawnWordsTest {
  private static final int SEEDS = 60;

  /** Sixty draws of two words: each word between 12 and 48 times but for one seed in a million. */
  @Test
  void everyCaseComesAndTheRecordTellsWhich() {
    TreeMap<String, Integer> cases = new TreeMap<>();
    for (long seed = 1; seed <= SEEDS; seed++) {
      List<Entry> entries = run(seed);
      long smell = drawn(entries, "smell");
      long side = drawn(entries, "side");
      String expected = smell == 1 ? "nothing" : side == 0 ? "left" : "right";

      assertThat(entries)
          .filteredOn(Entry.PhaseEntered.class::isInstance)
          .extracting(e -> ((Entry.PhaseEntered) e).id())
          .contains(expected);
      cases.merge(expected, 1, Integer::sum);
    }
    assertThat(cases.keySet()).containsExactly("left", "nothing", "right");
    assertThat(cases.get("nothing")).isBetween(12, 48);
  }

  private static long drawn(List<Entry> entries, String name) {
    return entries.stream()
        .filter(e -> e instanceof Entry.Drawn d && d.name().equals(name))
        .mapToLong(e -> ((Entry.Drawn) e).nano() / 1_000_000_000L)
        .findFirst()
        .orElseThrow();
  }

  private static List<Entry> run(long seed) {
    List<Entry> entries = new ArrayList<>();
    Session session =
        Session.open(
            ExampleScripts.SHIP,
            ExampleScripts.read("drawn-words"),
            seed,
            Mode.PRACTICE,
            entries::add);
    for (int i = 0; i < 20 * Engine.TICKS_PER_S; i++) {
      session.tick();
    }
    return entries;
  }
}
