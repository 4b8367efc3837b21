package handwheel.drill;

import handwheel.casualty.Fault;
import handwheel.ship.Gauge;

/**
 * A gauge that shows what is not so.
 *
 * @param fault what is wrong
 * @param fromTick since when
 * @param rampTicks how long it drifts to its full error; 0: at once
 * @param held what it showed then
 * @param gauge the gauge
 */
record GaugeBend(Fault.OfGauge fault, long fromTick, long rampTicks, double held, Gauge gauge) {
  /** Returns where the pointer stands for what it would show if it were right. */
  double shows(double right, long tick) {
    return switch (fault.trouble()) {
      case STUCK -> held;
      case HIGH -> right + fault.by() * share(tick);
      case LOW -> right - fault.by() * share(tick);
      case FULL -> held + (gauge.high() - held) * share(tick);
      case EMPTY -> held + (gauge.low() - held) * share(tick);
    };
  }

  private double share(long tick) {
    return rampTicks == 0 ? 1 : StrictMath.min(1, (double) (tick - fromTick) / rampTicks);
  }
}
