package handwheel.reader;

import handwheel.casualty.Step;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Finds steps that wait for each other in a circle: the shortest circle, then the next. */
final class AfterCycles {
  private final TreeMap<String, List<String>> waitsFor = new TreeMap<>();
  private final List<Step> steps;

  private AfterCycles(List<Step> steps) {
    this.steps = steps;
    steps.forEach(s -> waitsFor.put(s.id(), new ArrayList<>(s.after().keySet())));
  }

  static void report(List<Step> steps, Findings findings) {
    AfterCycles cycles = new AfterCycles(steps);
    Optional<List<String>> cycle = cycles.shortest();
    while (cycle.isPresent()) {
      cycles.add(cycle.get(), findings);
      cycle.get().forEach(cycles.waitsFor::remove);
      cycle = cycles.shortest();
    }
  }

  private void add(List<String> cycle, Findings findings) {
    String chain =
        cycle.stream().map(Say::quoted).collect(Collectors.joining(" after ")) + " after ";
    Step first = steps.stream().filter(s -> s.id().equals(cycle.get(0))).findFirst().orElseThrow();
    findings.add(
        FindingId.AFTER_CYCLE,
        first.grade().spot(),
        "steps wait for each other: " + chain + Say.quoted(cycle.get(0)),
        "Take one `after` out.");
  }

  /** Returns the shortest circle; of several the one that starts first in the script. */
  private Optional<List<String>> shortest() {
    return steps.stream()
        .map(Step::id)
        .filter(waitsFor::containsKey)
        .flatMap(id -> from(id).stream())
        .min(Comparator.comparingInt(List::size));
  }

  /** Searches breadth first for the way from a step back to it. */
  private Optional<List<String>> from(String start) {
    Map<String, String> cameFrom = new TreeMap<>();
    Deque<String> next = new ArrayDeque<>(List.of(start));
    while (!next.isEmpty()) {
      String here = next.remove();
      for (String before : waitsFor.getOrDefault(here, List.of())) {
        if (before.equals(start)) {
          return Optional.of(way(start, here, cameFrom));
        }
        if (cameFrom.putIfAbsent(before, here) == null) {
          next.add(before);
        }
      }
    }
    return Optional.empty();
  }

  private static List<String> way(String start, String end, Map<String, String> cameFrom) {
    List<String> way = new ArrayList<>();
    String here = end;
    while (!here.equals(start)) {
      way.add(here);
      here = cameFrom.getOrDefault(here, start);
    }
    way.add(start);
    Collections.reverse(way);
    return way;
  }
}
