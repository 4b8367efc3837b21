package handwheel.terminal;

import java.util.function.LongSupplier;

/** Turns the time of a clock into ticks of the drill. */
final class Pacer {
  private static final double TICKS_PER_NS = 20e-9;

  /** Nothing but a stopped process or a sleeping machine takes as long. */
  private static final long STANDSTILL_NS = 2_000_000_000L;

  private static final long NS_PER_S = 1_000_000_000L;

  private final LongSupplier clockNs;
  private final double pace;
  private long lastNs;
  private double owed;

  /**
   * What has passed since the turn before.
   *
   * @param ticks ticks of the drill
   * @param stoodStillS seconds the whole program stood still, which are not made up for; usually 0
   */
  record Turn(long ticks, long stoodStillS) {}

  Pacer(LongSupplier clockNs, double pace) {
    this.clockNs = clockNs;
    this.pace = pace;
    this.lastNs = clockNs.getAsLong();
  }

  Turn turn() {
    long now = clockNs.getAsLong();
    long passedNs = now - lastNs;
    lastNs = now;
    if (passedNs >= STANDSTILL_NS) {
      return new Turn(0, passedNs / NS_PER_S);
    }
    owed += passedNs * TICKS_PER_NS * pace;
    long ticks = (long) owed;
    owed -= ticks;
    return new Turn(ticks, 0);
  }

  /** Returns the clock's time at the last turn. */
  long lastNs() {
    return lastNs;
  }
}
