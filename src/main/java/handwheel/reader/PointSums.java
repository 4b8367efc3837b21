package handwheel.reader;

import handwheel.casualty.Step;
import handwheel.casualty.Variation;
import handwheel.diagnostics.SourceSpot;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** The points of a response make 100, whatever words are drawn. */
final class PointSums {
  private static final int ALL_POINTS = 100;

  private final List<Step> steps;
  private final SourceSpot spot;
  private final Findings findings;

  PointSums(List<Step> steps, SourceSpot spot, Findings findings) {
    this.steps = List.copyOf(steps);
    this.spot = spot;
    this.findings = findings;
  }

  /** Looks at every variation alone, the others at their first word. */
  void check(List<Variation> vary) {
    List<Variation> asked = vary.stream().filter(this::isAskedFor).toList();
    SortedMap<String, Double> firsts = new TreeMap<>();
    asked.forEach(v -> firsts.put(v.name(), 0.0));
    if (asked.isEmpty()) {
      report(sum(firsts), "");
    }
    for (Variation variation : asked) {
      for (int i = 0; i < variation.words().size(); i++) {
        SortedMap<String, Double> drawn = new TreeMap<>(firsts);
        drawn.put(variation.name(), (double) i);
        report(sum(drawn), " where " + Say.quoted(variation.words().get(i)) + " is drawn");
      }
    }
  }

  private boolean isAskedFor(Variation variation) {
    return steps.stream()
        .anyMatch(s -> s.only().filter(o -> o.variation().equals(variation.name())).isPresent());
  }

  private int sum(SortedMap<String, Double> drawn) {
    return steps.stream()
        .filter(s -> s.only().isEmpty() || s.only().get().holds(drawn))
        .mapToInt(s -> s.grade().points())
        .sum();
  }

  private void report(int sum, String where) {
    if (sum != ALL_POINTS) {
      findings.add(
          FindingId.POINTS_SUM,
          spot,
          "the points of the response add up to " + sum + where + "; they must make " + ALL_POINTS,
          "Change the points of the steps.");
    }
  }
}
