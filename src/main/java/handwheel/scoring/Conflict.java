package handwheel.scoring;

import java.util.ArrayList;
import java.util.List;

/**
 * Two acts done the wrong way round. Steps are told by their index in the script.
 *
 * @param early the act that was done first and should have come after
 * @param late the act that was done after it and should have come first
 */
record Conflict(int early, int late) {
  /** Every conflict between done steps, in the order of the script. */
  static List<Conflict> among(Precedence precedence, long[] instantTicks) {
    List<Conflict> all = new ArrayList<>();
    for (int early = 0; early < instantTicks.length; early++) {
      for (int late = 0; late < instantTicks.length; late++) {
        if (areDone(instantTicks, early, late)
            && precedence.isBroken(late, early, instantTicks[late], instantTicks[early])) {
          all.add(new Conflict(early, late));
        }
      }
    }
    return all;
  }

  private static boolean areDone(long[] instantTicks, int a, int b) {
    return instantTicks[a] != StepResult.NEVER && instantTicks[b] != StepResult.NEVER;
  }

  boolean concerns(int step) {
    return early == step || late == step;
  }

  /** Parts the conflicts so that no act is in two groups. */
  static List<List<Conflict>> groups(List<Conflict> conflicts) {
    List<List<Conflict>> groups = new ArrayList<>();
    for (Conflict c : conflicts) {
      List<Conflict> joined = new ArrayList<>(List.of(c));
      for (List<Conflict> group : List.copyOf(groups)) {
        if (group.stream().anyMatch(g -> c.concerns(g.early()) || c.concerns(g.late()))) {
          joined.addAll(group);
          groups.remove(group);
        }
      }
      groups.add(joined);
    }
    return groups;
  }
}
