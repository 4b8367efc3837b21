package handwheel.drill;

import handwheel.casualty.Fault;
import handwheel.plant.Plant;
import handwheel.plant.Quantity;
import handwheel.plant.StateWalker;
import handwheel.ship.Gauge;
import java.util.Arrays;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * What the gauges show: the true value through a first-order lag, held to the scale. Indication is
 * kept apart from truth.
 */
final class Instruments {
  private static final double TICK_S = 1.0 / Engine.TICKS_PER_S;

  private final List<Gauge> gauges;
  private final List<String> names;
  private final double[] shown;
  private final double[] gain;

  /** The figures as last written down; at first none. */
  private final double[] told;

  /** What is wrong with each gauge; null where nothing is. */
  private final @Nullable GaugeBend[] bends;

  private boolean isAnyBent;
  private long now;

  Instruments(List<Gauge> gauges) {
    this.gauges = gauges;
    this.names = gauges.stream().map(g -> "gauge." + g.id()).toList();
    this.shown = new double[gauges.size()];
    this.gain = new double[gauges.size()];
    this.told = new double[gauges.size()];
    this.bends = new GaugeBend[gauges.size()];
    Arrays.fill(told, Double.NEGATIVE_INFINITY);
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

  /** Makes a gauge show what is not so, from now on. */
  void bend(Fault.OfGauge fault, long tick, long rampTicks) {
    int i = index(fault.gauge());
    now = tick;
    bends[i] = new GaugeBend(fault, tick, rampTicks, shown(i), gauges.get(i));
    isAnyBent = true;
  }

  /** Puts a gauge right. */
  void mend(String gaugeId) {
    bends[index(gaugeId)] = null;
    isAnyBent = Arrays.stream(bends).anyMatch(b -> b != null);
  }

  /** Returns what a man sees of a true value, SI: the truth, unless his gauge is wrong. */
  double seen(Plant plant, Quantity quantity) {
    if (isAnyBent) {
      for (int i = 0; i < shown.length; i++) {
        if (bends[i] != null && gauges.get(i).of() == quantity) {
          return shownSi(i);
        }
      }
    }
    return plant.value(quantity);
  }

  /** Lets every gauge follow for one tick. */
  void tick(Plant plant, long tick) {
    now = tick;
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
    GaugeBend bend = bends[i];
    double hand = bend == null ? shown[i] : bend.shows(shown[i], now);
    return StrictMath.max(g.low(), StrictMath.min(g.high(), hand));
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

  /**
   * Returns the gauges whose printed figure has changed since they were last returned here, in
   * thousandths of their unit.
   */
  SortedMap<String, Long> changed() {
    SortedMap<String, Long> changed = new TreeMap<>();
    for (int i = 0; i < shown.length; i++) {
      double figure = figure(i);
      if (figure != told[i]) {
        told[i] = figure;
        changed.put(gauges.get(i).id(), milli(i));
      }
    }
    return changed;
  }

  /** Returns the reading in steps of the last decimal that a display shows. */
  private double figure(int i) {
    double steps = 1;
    for (int d = 0; d < gauges.get(i).unit().decimals(); d++) {
      steps *= 10;
    }
    return StrictMath.floor(shown(i) * steps + 0.5);
  }

  void walk(StateWalker walker) {
    for (int i = 0; i < shown.length; i++) {
      walker.visit(names.get(i), shown[i]);
      if (bends[i] != null) {
        walker.visit(names.get(i) + ".shows", shown(i));
      }
    }
  }
}
