package handwheel.reader;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A simple temporal network: points in time and how far apart they may lie. It contradicts itself
 * when its distance graph has a negative circle (Dechter, Meiri, Pearl 1991); that circle is the
 * explanation, found by the Bellman-Ford algorithm.
 */
final class TimeNet {
  private static final double LEAST_S = 1e-9;

  private final List<Edge> edges = new ArrayList<>();
  private final Map<String, Integer> points = new LinkedHashMap<>();

  /** {@code to} lies at most {@code s} behind {@code from}. */
  private record Edge(int from, int to, double s, String why) {}

  /** One point lies at least so far behind another. */
  void atLeast(String first, String then, double s, String why) {
    edges.add(new Edge(point(then), point(first), -s, why));
  }

  /** One point lies at most so far behind another. */
  void atMost(String first, String then, double s, String why) {
    edges.add(new Edge(point(first), point(then), s, why));
  }

  private int point(String name) {
    return points.computeIfAbsent(name, n -> points.size());
  }

  /** Returns the reasons of a negative circle, each once, or empty. */
  Optional<List<String>> contradiction() {
    double[] distance = new double[points.size()];
    Edge[] by = new Edge[points.size()];
    int last = -1;
    for (int round = 0; round <= points.size(); round++) {
      last = relax(distance, by);
    }
    return last < 0 ? Optional.empty() : Optional.of(circle(last, by));
  }

  /** Relaxes every edge once; returns a point that came nearer, or -1. */
  private int relax(double[] distance, Edge[] by) {
    int moved = -1;
    for (Edge e : edges) {
      if (distance[e.from()] + e.s() < distance[e.to()] - LEAST_S) {
        distance[e.to()] = distance[e.from()] + e.s();
        by[e.to()] = e;
        moved = e.to();
      }
    }
    return moved;
  }

  private List<String> circle(int last, Edge[] by) {
    int at = last;
    for (int i = 0; i < points.size(); i++) {
      at = by[at].from();
    }
    List<String> why = new ArrayList<>();
    int start = at;
    do {
      why.add(0, by[at].why());
      at = by[at].from();
    } while (at != start);
    return why.stream().distinct().toList();
  }
}
