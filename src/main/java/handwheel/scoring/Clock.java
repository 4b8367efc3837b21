package handwheel.scoring;

import java.math.BigDecimal;

/** Ticks as people read them. */
final class Clock {
  static final long TICKS_PER_S = 20;

  private Clock() {}

  /** A span such as {@code 12.35 s}. */
  static String seconds(long ticks) {
    return BigDecimal.valueOf(ticks * 5, 2).stripTrailingZeros().toPlainString() + " s";
  }

  /** Whole seconds begun. */
  static long secondsBegun(long ticks) {
    return ticks <= 0 ? 0 : (ticks + TICKS_PER_S - 1) / TICKS_PER_S;
  }

  /** A time such as {@code 1:05}, counted from a tick; before it with a minus sign. */
  static String minutes(long tick, long zeroTick) {
    long s = Math.abs(tick - zeroTick) / TICKS_PER_S;
    String text = s / 60 + ":" + (s % 60 < 10 ? "0" : "") + s % 60;
    return tick < zeroTick ? "-" + text : text;
  }
}
