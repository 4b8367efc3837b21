package handwheel.reader;

import handwheel.casualty.Amount;
import handwheel.casualty.Bound;
import handwheel.casualty.Phase;
import handwheel.casualty.When;
import handwheel.diagnostics.SourceSpot;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Checks how the phases of a casualty hang together. */
final class PhaseChecks {
  private final List<Phase> phases;
  private final Names names;
  private final Findings findings;

  PhaseChecks(List<Phase> phases, Names names, Findings findings) {
    this.phases = List.copyOf(phases);
    this.names = names;
    this.findings = findings;
  }

  void check(SourceSpot list) {
    boolean hasEnd = phases.stream().anyMatch(Phase::isEnd);
    if (!hasEnd) {
      findings.add(
          FindingId.NO_END, list, "no phase is the end", "Write `end: true` in the last phase.");
    }
    Set<String> reached = reached();
    Set<String> ending = ending();
    for (Phase phase : phases) {
      if (!reached.contains(phase.id())) {
        add(
            FindingId.UNREACHABLE_PHASE,
            phase,
            "no way leads to phase " + Say.quoted(phase.id()),
            "Let another phase lead to it, or take it out.");
      }
      if (!phase.isEnd() && (phase.next().isEmpty() || (hasEnd && !ending.contains(phase.id())))) {
        deadEnd(phase);
      }
      waysOut(phase);
    }
    Livelocks.of(phases).forEach(this::livelock);
  }

  private void livelock(List<String> circle) {
    Phase first =
        phases.stream().filter(p -> p.id().equals(circle.get(0))).findFirst().orElseThrow();
    add(
        FindingId.LIVELOCK,
        first,
        "phases follow each other without any time going by: "
            + String.join(" to ", circle.stream().map(Say::quoted).toList())
            + " to "
            + Say.quoted(circle.get(0)),
        "Give one of the ways an `after`, or conditions that exclude each other.");
  }

  private void deadEnd(Phase phase) {
    add(
        FindingId.DEAD_END,
        phase,
        phase.next().isEmpty()
            ? "phase " + Say.quoted(phase.id()) + " has no way out and is no end"
            : "no way out of phase " + Say.quoted(phase.id()) + " leads to an end",
        "Add a way out with `next`, or `end: true`.");
  }

  private Set<String> reached() {
    TreeSet<String> reached = new TreeSet<>();
    Deque<Phase> next = new ArrayDeque<>(List.of(phases.get(0)));
    while (!next.isEmpty()) {
      Phase here = next.remove();
      if (reached.add(here.id())) {
        here.next().forEach(t -> phase(t.to()).ifPresent(next::add));
      }
    }
    return reached;
  }

  /** Returns the phases from which an end can be reached. */
  private Set<String> ending() {
    TreeSet<String> ending = new TreeSet<>();
    int before = -1;
    while (ending.size() > before) {
      before = ending.size();
      phases.stream()
          .filter(p -> p.isEnd() || p.next().stream().anyMatch(t -> ending.contains(t.to())))
          .map(Phase::id)
          .forEach(ending::add);
    }
    return ending;
  }

  private Optional<Phase> phase(String id) {
    return phases.stream().filter(p -> p.id().equals(id)).findFirst();
  }

  private void waysOut(Phase phase) {
    List<Phase.Transition> ways = phase.next();
    for (int later = 1; later < ways.size(); later++) {
      for (int earlier = 0; earlier < later; earlier++) {
        compare(phase, ways.get(earlier), ways.get(later));
      }
    }
  }

  private void compare(Phase phase, Phase.Transition earlier, Phase.Transition later) {
    if (isAlwaysFirst(earlier, later)) {
      add(
          FindingId.SHADOWED_WAY,
          phase,
          "the way to "
              + Say.quoted(later.to())
              + " is never taken, that to "
              + Say.quoted(earlier.to())
              + " always comes first",
          "Take it out, or change its time.");
    } else if (isSameSubject(earlier, later)) {
      add(
          FindingId.BOTH_WAYS,
          phase,
          "the ways to "
              + Say.quoted(earlier.to())
              + " and "
              + Say.quoted(later.to())
              + " can be open in the same tick; the first in the script is taken",
          "Leave it so if that is meant.");
    }
  }

  private static boolean isAlwaysFirst(Phase.Transition earlier, Phase.Transition later) {
    boolean isTimed = earlier.when().isEmpty() && later.when().isEmpty();
    return isTimed && fixedS(earlier).flatMap(e -> fixedS(later).filter(l -> e <= l)).isPresent();
  }

  private static Optional<Double> fixedS(Phase.Transition way) {
    return way.afterS().filter(Amount.Fixed.class::isInstance).map(a -> ((Amount.Fixed) a).si());
  }

  /** Two bounds on one value that a single figure can keep. */
  private static boolean isSameSubject(Phase.Transition earlier, Phase.Transition later) {
    Optional<Subject> one = earlier.when().flatMap(Subject::of);
    Optional<Subject> other = later.when().flatMap(Subject::of);
    return one.flatMap(o -> other.filter(o::overlaps)).isPresent();
  }

  private void add(FindingId id, Phase phase, String message, String mend) {
    findings.add(id, names.spot(Named.PHASE, phase.id()), message, mend);
  }

  /** A value with a bound on it. */
  private record Subject(String id, Bound bound) {
    static Optional<Subject> of(When when) {
      if (when instanceof When.PlantIs plant) {
        return Optional.of(new Subject("plant " + plant.truth().id(), plant.bound()));
      }
      return when instanceof When.GaugeIs gauge
          ? Optional.of(new Subject("gauge " + gauge.gauge(), gauge.bound()))
          : Optional.empty();
    }

    boolean overlaps(Subject other) {
      if (!id.equals(other.id)) {
        return false;
      }
      double upper = bound.isUpper() ? bound.si() : other.bound.si();
      double lower = bound.isUpper() ? other.bound.si() : bound.si();
      return bound.isUpper() == other.bound.isUpper() || lower < upper;
    }
  }
}
