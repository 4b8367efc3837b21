package handwheel.reader;

import handwheel.casualty.Step;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Finds what a step waits for twice: directly, and by way of another step. Source: transitive
 * reduction, Aho, Garey, Ullman, SIAM J. Comput. 1 (1972) 131-137.
 */
final class RedundantAfter {
  private final Map<String, Step> steps = new TreeMap<>();

  private RedundantAfter(List<Step> all) {
    all.forEach(s -> steps.put(s.id(), s));
  }

  static void report(List<Step> all, Findings findings) {
    RedundantAfter redundant = new RedundantAfter(all);
    for (Step step : all) {
      for (String before : step.after().keySet()) {
        redundant
            .between(step, before)
            .ifPresent(
                other ->
                    findings.add(
                        FindingId.REDUNDANT_AFTER,
                        step.grade().spot(),
                        Say.quoted(step.id())
                            + " waits for "
                            + Say.quoted(before)
                            + " already by way of "
                            + Say.quoted(other),
                        "Leave it so if the rule behind it is worth telling."));
      }
    }
  }

  /** Returns another step it waits for that in turn waits for the same. */
  private Optional<String> between(Step step, String before) {
    return step.after().keySet().stream()
        .filter(other -> !other.equals(before) && waits(other, before))
        .findFirst();
  }

  private boolean waits(String from, String goal) {
    TreeSet<String> seen = new TreeSet<>();
    Deque<String> next = new ArrayDeque<>(List.of(from));
    while (!next.isEmpty()) {
      Step here = steps.get(next.remove());
      if (here != null && seen.add(here.id())) {
        if (here.after().containsKey(goal)) {
          return true;
        }
        next.addAll(here.after().keySet());
      }
    }
    return false;
  }
}
