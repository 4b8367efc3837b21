package handwheel.scoring;

import handwheel.casualty.Step;
import handwheel.casualty.Window;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Stream;

/**
 * A step that came after its time.
 *
 * @param ticks by how much
 * @param tick when it came
 * @param allowed what was allowed, for people
 */
record Late(long ticks, long tick, String allowed) {
  /** One second begun is one point. */
  int seconds() {
    return (int) Math.min(Integer.MAX_VALUE, Clock.secondsBegun(ticks));
  }

  /** The worse of the two: begun too late, or finished too late. Never both. */
  static Optional<Late> of(Step step, Act act, Starts starts) {
    return Stream.of(
            step.within().flatMap(w -> over(w, act.begunTick(), "begun", starts)),
            step.done().flatMap(w -> over(w, act.judgedTick(), "complete", starts)))
        .flatMap(Optional::stream)
        .reduce((a, b) -> b.ticks() > a.ticks() ? b : a);
  }

  /** A time that never began to run cannot be missed. */
  private static Optional<Late> over(Window window, long tick, String what, Starts starts) {
    OptionalLong due = starts.dueTick(window);
    if (due.isEmpty() || tick <= due.getAsLong()) {
      return Optional.empty();
    }
    return Optional.of(new Late(tick - due.getAsLong(), tick, what + " within " + text(window)));
  }

  static String text(Window window) {
    String kind =
        switch (window.since()) {
          case CUE -> "";
          case PHASE -> "phase ";
          case STEP -> "step ";
        };
    return Clock.seconds(window.ticks()) + " of " + kind + window.of();
  }
}
