package handwheel.drill;

import handwheel.plant.Plant;
import handwheel.plant.StateWalker;
import handwheel.ship.Gauge;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What the gauges show: the true value through a first-order lag, held to the scale. Indication is
 * kept apart from truth.
 */
final class Instruments {
  private static final double TICK_S = 1.0 / Engine.TICKS_PER_S;

  private final List<Gauge> gauges;
  private final double[] shown;
  private final double[] gain;

  Instruments(List<Gauge> gauges) {
    this.gauges = gauges;
    this.shown = new double[gauges.size()];
    this.gain = new double[gauges.size()];
    for (int i = 0; i < gain.length; i++) {
      double lagS = gauges.get(i).lagS();
      gain[i] = lagS > 0 ? 1 - StrictMath.exp(-TICK_S / lagS) : 1;
    }
  }

  /** Sets every gauge to the true value. */
  void settle(Plant plant) {
    for (int i = 0; i < shown.length; i++) {
      shown[i] = truth(plant, i);
    }
  }

  /** Lets every gauge follow for one tick. */
  void tick(Plant plant) {
    for (int i = 0; i < shown.length; i++) {
      shown[i] += (truth(plant, i) - shown[i]) * gain[i];
    }
  }

  private double truth(Plant plant, int i) {
    Gauge g = gauges.get(i);
    return g.of().in(g.unit(), plant.value(g.of()));
  }

  /** Returns what a gauge shows, in its unit, within its scale. */
  double shown(int i) {
    Gauge g = gauges.get(i);
    return StrictMath.max(g.low(), StrictMath.min(g.high(), shown[i]));
  }

  /** Returns the same in SI of the true value behind it. */
  double shownSi(int i) {
    Gauge g = gauges.get(i);
    return g.of().si(new handwheel.units.Measure(shown(i), g.unit())).orElseThrow();
  }

  /** Returns thousandths of the gauge's unit. */
  long milli(int i) {
    return (long) StrictMath.floor(shown(i) * 1000 + 0.5);
  }

  int index(String gaugeId) {
    for (int i = 0; i < gauges.size(); i++) {
      if (gauges.get(i).id().equals(gaugeId)) {
        return i;
      }
    }
    throw new IllegalArgumentException("no gauge " + gaugeId);
  }

  Gauge gauge(int i) {
    return gauges.get(i);
  }

  int count() {
    return shown.length;
  }

  SortedMap<String, Long> all() {
    SortedMap<String, Long> all = new TreeMap<>();
    for (int i = 0; i < shown.length; i++) {
      all.put(gauges.get(i).id(), milli(i));
    }
    return all;
  }

  void walk(StateWalker walker) {
    for (int i = 0; i < shown.length; i++) {
      walker.visit("gauge." + gauges.get(i).id(), shown[i]);
    }
  }
}
