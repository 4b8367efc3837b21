package handwheel.board;

import handwheel.logbook.Minute;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Assessors' marks, entered before the machine's score was shown to them. */
public final class Marks {
  private Marks() {}

  /**
   * Returns the marks of a run, one for each assessor: his last before the score was shown to him.
   *
   * @param minutes all minutes, in their order
   * @param root root of the run
   * @return in the order in which they were first entered
   */
  public static List<Minute> of(List<Minute> minutes, String root) {
    Map<String, Minute> marks = new LinkedHashMap<>();
    List<String> shown = new ArrayList<>();
    for (Minute m : minutes) {
      if (!m.of().equals(root)) {
        continue;
      }
      if (m.kind().equals("shown")) {
        shown.add(m.by());
      } else if (m.kind().equals("marked") && !shown.contains(m.by())) {
        marks.put(m.by(), m);
      }
    }
    return List.copyOf(marks.values());
  }

  /**
   * Returns whether a run's score may be shown to somebody.
   *
   * @param minutes all minutes
   * @param run the run
   * @param who his pseudonym
   * @return true for what was not scored, and for a run he has marked
   */
  public static boolean mayShow(List<Minute> minutes, RunRow run, String who) {
    return !run.run().isScored()
        || of(minutes, run.root()).stream().anyMatch(m -> m.by().equals(who));
  }

  /**
   * Returns how far assessors agree on pass or fail: Cohen's kappa for two, Fleiss' for more. Only
   * runs that the same number of them marked can be taken together.
   *
   * @param minutes all minutes
   * @param runs the runs
   * @param assessors how many marked each run that is taken
   * @return at most 1
   */
  public static Figure agreement(List<Minute> minutes, List<RunRow> runs, int assessors) {
    List<int[]> counts = new ArrayList<>();
    for (RunRow run : runs) {
      List<Minute> marks = of(minutes, run.root());
      if (marks.size() == assessors) {
        int passed = (int) marks.stream().filter(m -> m.fact("verdict").equals("pass")).count();
        counts.add(new int[] {passed, assessors - passed});
      }
    }
    return Agreement.fleiss(counts);
  }

  /**
   * Returns Cohen's kappa of two assessors over the runs both marked.
   *
   * @param minutes all minutes
   * @param runs the runs
   * @param first pseudonym of one
   * @param second pseudonym of the other
   * @return at most 1
   */
  public static Figure cohen(List<Minute> minutes, List<RunRow> runs, String first, String second) {
    int[][] counts = new int[2][2];
    for (RunRow run : runs) {
      List<Minute> marks = of(minutes, run.root());
      int a = verdict(marks, first);
      int b = verdict(marks, second);
      if (a >= 0 && b >= 0) {
        counts[a][b]++;
      }
    }
    return Agreement.cohen(counts);
  }

  private static int verdict(List<Minute> marks, String who) {
    return marks.stream()
        .filter(m -> m.by().equals(who))
        .findFirst()
        .map(m -> m.fact("verdict").equals("pass") ? 1 : 0)
        .orElse(-1);
  }
}
