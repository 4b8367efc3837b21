package handwheel.debrief;

import handwheel.drill.Engine;
import handwheel.logbook.Entry;
import java.math.BigDecimal;
import java.util.List;

/**
 * Ticks as people read them, counted from the first cue.
 *
 * @param zeroTick the first cue, or the start where none was given
 */
record Times(long zeroTick) {
  private static final long HUNDREDTHS_PER_TICK = 5;

  static Times of(List<Entry> entries) {
    return new Times(
        entries.stream()
            .filter(Entry.CueGiven.class::isInstance)
            .mapToLong(Entry::t)
            .findFirst()
            .orElse(0));
  }

  /** A moment such as {@code 1:05}; before the first cue with a minus sign. */
  String at(long tick) {
    String clock = Sentences.clock(Math.abs(tick - zeroTick));
    return tick < zeroTick ? "-" + clock : clock;
  }

  /** A span to a tenth of a second, such as {@code 12.4 s}. */
  static String span(long ticks) {
    BigDecimal s = BigDecimal.valueOf(ticks * HUNDREDTHS_PER_TICK, 2);
    return s.setScale(1, java.math.RoundingMode.HALF_UP).toPlainString() + " s";
  }

  /** A span as minutes and seconds. */
  static String clock(long ticks) {
    return Sentences.clock(ticks);
  }

  static long ticks(double seconds) {
    return Engine.ticks(seconds);
  }
}
