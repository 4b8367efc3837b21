package handwheel.screen;

import handwheel.drill.Engine;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Lines from a pipe and when they are said: {@code 12 everyone leave} at second 12, a line without
 * a time when it comes, but a second after the line before it, since nobody says two things at
 * once. Empty lines and those that begin with {@code #} say nothing.
 */
final class TimedLines {
  private static final Pattern TIMED = Pattern.compile("(\\d{1,6}(?:\\.\\d{1,2})?)\\s+(.*)");
  private static final long BETWEEN_TICKS = Engine.TICKS_PER_S;

  private final Deque<Line> waiting = new ArrayDeque<>();
  private long lastTick = -BETWEEN_TICKS;

  /** A line and the tick it is said at; without a time of its own, as soon as it may. */
  private record Line(String text, long tick) {
    static final long ANY = -1;
  }

  void add(String line) {
    String text = line.strip();
    if (text.isEmpty() || text.startsWith("#")) {
      return;
    }
    Matcher m = TIMED.matcher(text);
    waiting.add(
        m.matches()
            ? new Line(m.group(2), Engine.ticks(Double.parseDouble(m.group(1))))
            : new Line(text, Line.ANY));
  }

  boolean isEmpty() {
    return waiting.isEmpty();
  }

  /** Returns the tick the next line is said at; there must be one. */
  long nextTick(long now) {
    Line next = waiting.element();
    return Math.max(now, next.tick() == Line.ANY ? lastTick + BETWEEN_TICKS : next.tick());
  }

  /** Takes the next line, which is said now. */
  String take(long now) {
    lastTick = now;
    return waiting.remove().text();
  }
}
