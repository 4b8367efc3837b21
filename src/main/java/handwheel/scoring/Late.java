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
  static Optional<Late> of(Step step, Act act, RunLog log) {
    return Stream.of(
            step.within().flatMap(w -> over(w, act.begunTick(), "begun", log)),
            step.done().flatMap(w -> over(w, act.judgedTick(), "complete", log)))
        .flatMap(Optional::stream)
        .reduce((a, b) -> b.ticks() > a.ticks() ? b : a);
  }

  /** A window whose cue was never given cannot be missed. */
  private static Optional<Late> over(Window window, long tick, String what, RunLog log) {
    OptionalLong cue = log.cueTick(window.cue());
    if (cue.isEmpty() || tick <= cue.getAsLong() + window.ticks()) {
      return Optional.empty();
    }
    long ticks = tick - cue.getAsLong() - window.ticks();
    return Optional.of(new Late(ticks, tick, what + " within " + text(window)));
  }

  static String text(Window window) {
    return Clock.seconds(window.ticks()) + " of " + window.cue();
  }
}
