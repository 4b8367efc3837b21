package handwheel.board;

import handwheel.logbook.Minute;
import java.util.Comparator;
import java.util.List;

/**
 * What a board knows of one candidate.
 *
 * @param id pseudonym
 * @param runs his runs in the order of their start
 * @param minutes all minutes of the board, in their order
 */
public record Candidate(String id, List<RunRow> runs, List<Minute> minutes) {
  /**
   * Sorts the runs and copies the lists.
   *
   * @param id pseudonym
   * @param runs his runs
   * @param minutes all minutes of the board, in their order
   */
  public Candidate {
    runs = runs.stream().sorted(Comparator.comparing((RunRow r) -> r.about().started())).toList();
    minutes = List.copyOf(minutes);
  }

  /**
   * Returns the minutes about him or one of his runs.
   *
   * @param kind kind of minute
   * @return in their order
   */
  public List<Minute> minutes(String kind) {
    return minutes.stream().filter(m -> m.kind().equals(kind) && m.of().equals(id)).toList();
  }

  /**
   * Returns the assessors' marks of a run, the last of each assessor.
   *
   * @param run one of his runs
   * @return marks in the order in which they were first entered
   */
  public List<Minute> marks(RunRow run) {
    return Marks.of(minutes, run.root());
  }

  /**
   * Returns which attempt at its drill a run is.
   *
   * @param run one of his runs
   * @return 1 for the first, in any mode
   */
  public int attempt(RunRow run) {
    int n = 0;
    for (RunRow r : runs) {
      n += r.run().script().equals(run.run().script()) ? 1 : 0;
      if (r.path().equals(run.path())) {
        return n;
      }
    }
    return n;
  }

  /**
   * Says how he had met a run's drill before.
   *
   * @param run one of his runs
   * @return such as {@code drill seen 2 times before, this seed once}
   */
  public String exposure(RunRow run) {
    List<RunRow> before = runs.subList(0, runs.indexOf(run));
    long script = before.stream().filter(r -> isSameDrill(r, run)).count();
    long seed =
        before.stream()
            .filter(r -> isSameDrill(r, run) && r.run().seed() == run.run().seed())
            .count();
    return script == 0 ? "new to him" : "drill met " + script + " before, this seed " + seed;
  }

  private static boolean isSameDrill(RunRow a, RunRow b) {
    return a.run().script().equals(b.run().script());
  }

  /**
   * Returns the last decision about him on a drill.
   *
   * @param drill id of the drill
   * @return the minute; empty if the board has not decided
   */
  public java.util.Optional<Minute> decision(String drill) {
    return Minute.last(minutes("decided").stream().filter(m -> m.fact("drill").equals(drill)));
  }

  /**
   * Returns his drills.
   *
   * @return ids in alphabetical order, each once
   */
  public List<String> drills() {
    return runs.stream().map(r -> r.run().script()).distinct().sorted().toList();
  }
}
