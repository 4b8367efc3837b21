package handwheel.scoring;

import java.util.List;
import java.util.stream.Stream;

/**
 * A step done, with its one instant for each test. Ticks are 0.05 s.
 *
 * @param begunTick instant for {@code within}
 * @param instantTick instant for {@code after}
 * @param completeTick when the effect was complete
 * @param judgedTick instant for {@code done}: {@code completeTick} less what crew or gear cost
 * @param deeds what was done, one for each fitting
 */
record Act(long begunTick, long instantTick, long completeTick, long judgedTick, List<Deed> deeds) {
  Act {
    deeds = List.copyOf(deeds);
  }

  static Act at(long tick, List<Deed> deeds) {
    return new Act(tick, tick, tick, tick, deeds);
  }

  /** Both done: the later one counts. */
  Act and(Act other) {
    return new Act(
        Math.max(begunTick, other.begunTick),
        Math.max(instantTick, other.instantTick),
        Math.max(completeTick, other.completeTick),
        Math.max(judgedTick, other.judgedTick),
        Stream.concat(deeds.stream(), other.deeds.stream()).toList());
  }
}
