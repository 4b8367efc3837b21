package handwheel.board;

import static org.assertj.core.api.Assertions.assertThat;

import handwheel.logbook.About;
import handwheel.logbook.Chain;
import handwheel.logbook.Entry;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The index gives back what was put in, filters it, and stays quick when it is large. */
class RunIndexTest {
  private static final int MANY = Boolean.getBoolean("soak") ? 100_000 : 5_000;

  @TempDir Path folder;

  static RunRow row(int no, String trainee, String script, String verdict) {
    String day = "2031-" + two(1 + no % 12) + "-" + two(1 + no % 28);
    About about =
        new About(no, Chain.START, trainee, day + "T08:15:00Z", trainee, "P-9999", "ab".repeat(32));
    Entry.Run run =
        new Entry.Run(1, "0.1.0", "alder-reach", "5a5875", script, "47082a", no, "scored");
    Entry.Score score =
        new Entry.Score(
            verdict.equals("pass") ? 90 : 40,
            verdict,
            List.of(new Entry.Loss(10, "late", "clear", 900, "Too late.", "trade-rule")));
    String root = String.format(java.util.Locale.ROOT, "%064x", no);
    return new RunRow(no + ".hwr", about, run, score, root, "finished", "", true);
  }

  private static String two(int n) {
    return n < 10 ? "0" + n : String.valueOf(n);
  }

  @Test
  void whatWasPutInComesBack() throws BoardTrouble {
    try (RunIndex index = RunIndex.open(folder.resolve("i.sqlite").toString())) {
      RunRow row = row(1, "P-0001", "steam-leak", "pass");
      index.put(List.of(new RunIndex.Stamped("1@2", row)));
      assertThat(index.listWithLost(RunFilter.ALL)).containsExactly(row);
      assertThat(index.numbered(1)).containsExactly(row.withLost(List.of()));
      assertThat(index.stamps()).containsEntry("1.hwr", "1@2");
      index.put(List.of(new RunIndex.Stamped("1@3", row)));
      assertThat(index.listWithLost(RunFilter.ALL)).containsExactly(row);
      index.remove(List.of("1.hwr"));
      assertThat(index.list(RunFilter.ALL)).isEmpty();
    }
  }

  @Test
  void aFileOpenedAgainKeepsItsRows() throws BoardTrouble {
    String file = folder.resolve("i.sqlite").toString();
    try (RunIndex index = RunIndex.open(file)) {
      index.put(List.of(new RunIndex.Stamped("1@2", row(1, "P-0001", "a", "pass"))));
    }
    try (RunIndex index = RunIndex.open(file)) {
      assertThat(index.count(RunFilter.ALL)).isEqualTo(1);
    }
  }

  @Test
  void manyRunsAreFilteredAtOnce() throws BoardTrouble {
    try (RunIndex index = RunIndex.open(folder.resolve("i.sqlite").toString())) {
      List<RunIndex.Stamped> rows = new ArrayList<>();
      for (int i = 1; i <= MANY; i++) {
        String script = i % 3 == 0 ? "low-water" : "steam-leak";
        RunRow row = row(i, "P-" + i % 500, script, i % 4 == 0 ? "fail" : "pass");
        rows.add(new RunIndex.Stamped("1@1", row));
      }
      index.put(rows);
      RunFilter filter =
          new RunFilter("P-7", "steam-leak", "2031-02-01", "2031-11-30", "pass", 100);
      assertThat(index.list(filter))
          .isNotEmpty()
          .allMatch(r -> r.about().trainee().equals("P-7"))
          .allMatch(r -> r.run().script().equals("steam-leak"))
          .allMatch(r -> r.score().verdict().equals("pass"));
      RunFilter month = new RunFilter("", "low-water", "2031-05-01", "2031-05-31", "fail", 100);
      RunFilter passed = new RunFilter("", "steam-leak", "", "", "pass", 100);
      long before = System.nanoTime();
      index.list(filter);
      long mid = System.nanoTime();
      index.list(month);
      index.count(month);
      long late = System.nanoTime();
      index.list(passed);
      index.count(passed);
      long end = System.nanoTime();
      System.out.printf(
          java.util.Locale.ROOT,
          "%d runs: candidate %d us, month %d us, all passed and their count %d us%n",
          MANY,
          (mid - before) / 1000,
          (late - mid) / 1000,
          (end - late) / 1000);
      long tookMs = (end - before) / 1_000_000;
      assertThat(tookMs).isLessThan(3_000);
    }
  }
}
