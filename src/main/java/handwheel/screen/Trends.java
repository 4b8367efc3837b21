package handwheel.screen;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What the gauges before his eyes have shown, as somebody remembers who keeps looking: a sample
 * each two seconds. What he could not see is not there.
 *
 * @param samples share of the scale by gauge, the oldest first
 * @param first where each pointer stood when he saw it first: the chalk mark
 * @param lastTick tick of the last sample
 * @param chosen how many gauges further than the first the chosen one is
 */
record Trends(
    SortedMap<String, List<Double>> samples,
    SortedMap<String, Double> first,
    long lastTick,
    int chosen) {
  static final Trends NONE = new Trends(new TreeMap<>(), new TreeMap<>(), -1, 0);

  /** Ticks between two samples. */
  static final int EVERY_TICKS = 40;

  /** Two minutes. */
  static final int MOST = 60;

  Trends {
    samples = Collections.unmodifiableSortedMap(samples);
    first = Collections.unmodifiableSortedMap(first);
  }

  Trends with(Sighting sighting) {
    boolean isDue = lastTick < 0 || sighting.tick() - lastTick >= EVERY_TICKS;
    if (!isDue || sighting.isWalking()) {
      return this;
    }
    TreeMap<String, List<Double>> more = new TreeMap<>();
    TreeMap<String, Double> chalk = new TreeMap<>(first);
    for (Dial dial : sighting.dials()) {
      List<Double> all = new ArrayList<>(samples.getOrDefault(dial.id(), List.of()));
      all.add(dial.share());
      more.put(dial.id(), List.copyOf(all.subList(Math.max(0, all.size() - MOST), all.size())));
      chalk.putIfAbsent(dial.id(), dial.share());
    }
    return new Trends(more, chalk, sighting.tick(), chosen);
  }

  Trends choosing(int by) {
    return new Trends(samples, first, lastTick, chosen + by);
  }

  /** Returns where a pointer stood when it was seen first. */
  double chalk(Dial dial) {
    return first.getOrDefault(dial.id(), dial.share());
  }

  List<Double> of(Dial dial) {
    return samples.getOrDefault(dial.id(), List.of());
  }
}
