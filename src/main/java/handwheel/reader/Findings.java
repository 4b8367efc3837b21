package handwheel.reader;

import handwheel.diagnostics.Finding;
import handwheel.diagnostics.SourceSpot;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Collects what is wrong with one input, and counts the parts that could not be read. */
final class Findings {
  private final List<Finding> all = new ArrayList<>();
  private int lost;

  void add(FindingId id, SourceSpot spot, String message, String mend) {
    all.add(new Finding(id.id(), id.severity(), spot, message, mend));
  }

  /** Returns whether something was found in a line already. */
  boolean has(FindingId id, int line) {
    return all.stream().anyMatch(f -> f.id().equals(id.id()) && f.spot().line() == line);
  }

  /** Notes that a part of the model is missing. */
  void lose() {
    lost++;
  }

  /** Returns how many parts are missing so far. */
  int lost() {
    return lost;
  }

  /** Returns the findings by place, at most as many as the limit, then a note if more were made. */
  List<Finding> byPlace() {
    List<Finding> sorted = new ArrayList<>(all);
    sorted.sort(Comparator.comparing(Finding::spot));
    if (sorted.size() <= Limits.FINDINGS) {
      return List.copyOf(sorted);
    }
    List<Finding> first = new ArrayList<>(sorted.subList(0, Limits.FINDINGS));
    FindingId more = FindingId.MORE_FINDINGS;
    String message = (sorted.size() - Limits.FINDINGS) + " more findings are left out";
    SourceSpot last = first.get(first.size() - 1).spot();
    first.add(new Finding(more.id(), more.severity(), last, message, "Mend these first."));
    return List.copyOf(first);
  }
}
