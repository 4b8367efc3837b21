package handwheel.debrief;

import handwheel.drill.Input;

/**
 * An input and the tick it takes effect at.
 *
 * @param tick when
 * @param input what
 */
record TimedInput(long tick, Input input) {
  /** The same input at another tick; an order takes the time it was typed in along. */
  TimedInput at(long to) {
    long when = Math.max(0, to);
    return input instanceof Input.Said s
        ? new TimedInput(when, new Input.Said(s.order(), when - (tick - s.firstKeyTick())))
        : new TimedInput(when, input);
  }
}
