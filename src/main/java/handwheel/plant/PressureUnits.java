package handwheel.plant;

import handwheel.units.Dimension;
import handwheel.units.Unit;

/** Gauge and absolute pressure, one atmosphere apart. */
final class PressureUnits {
  private PressureUnits() {}

  /** Tells whether both units are of pressure, whatever it is counted from. */
  static boolean areBoth(Unit one, Unit other) {
    return isPressure(one) && isPressure(other);
  }

  private static boolean isPressure(Unit unit) {
    return unit.dimension() == Dimension.ABSOLUTE_PRESSURE
        || unit.dimension() == Dimension.GAUGE_PRESSURE;
  }

  /** Returns what to add to a pressure counted as in one unit to have it as in the other, Pa. */
  static double atmosphereBetween(Unit from, Unit to) {
    if (from.dimension() == to.dimension()) {
      return 0;
    }
    boolean isGauge = from.dimension() == Dimension.GAUGE_PRESSURE;
    return isGauge ? Physics.ATMOSPHERE_PA : -Physics.ATMOSPHERE_PA;
  }
}
