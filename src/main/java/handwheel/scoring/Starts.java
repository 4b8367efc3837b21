package handwheel.scoring;

import handwheel.casualty.Step;
import handwheel.casualty.Window;
import handwheel.logbook.Entry;
import handwheel.ship.Ship;
import java.util.List;
import java.util.OptionalLong;

/** From which tick each time of a script runs. */
final class Starts {
  private final RunLog log;
  private final Finder finder;
  private final List<Step> steps;

  Starts(List<Step> steps, Ship ship, RunLog log) {
    this.steps = List.copyOf(steps);
    this.log = log;
    this.finder = new Finder(ship, log);
  }

  /** The tick from which a time runs; empty if that never came. */
  OptionalLong of(Window window) {
    return switch (window.since()) {
      case CUE -> log.cueTick(window.of());
      case PHASE -> phaseTick(window.of());
      case STEP -> stepTick(window.of());
    };
  }

  /** When a step's time is up; empty if it never began. */
  OptionalLong dueTick(Window window) {
    OptionalLong start = of(window);
    return start.isPresent() ? OptionalLong.of(start.getAsLong() + window.ticks()) : start;
  }

  private OptionalLong phaseTick(String phase) {
    return log.all(Entry.PhaseEntered.class)
        .filter(e -> e.id().equals(phase))
        .mapToLong(Entry.PhaseEntered::t)
        .findFirst();
  }

  /** The first way the step was done for what called for it. */
  private OptionalLong stepTick(String id) {
    return steps.stream()
        .filter(s -> s.id().equals(id))
        .flatMap(s -> finder.from(calledTick(s)).find(s).stream())
        .mapToLong(Act::instantTick)
        .findFirst();
  }

  /** When the cue or phase came that calls for a step; 0 where none does or none came. */
  long calledTick(Step step) {
    return step.within()
        .or(step::done)
        .filter(w -> w.since() != Window.Since.STEP)
        .map(w -> of(w).orElse(0))
        .orElse(0L);
  }
}
