package handwheel.scoring;

import handwheel.casualty.Step;
import handwheel.casualty.Window;
import java.util.List;
import java.util.Optional;

/**
 * Whether a step that was never done is nobody's fault. What can be asked of a trainee when crew or
 * gear fails an order is to give it again. So nothing is charged if the last order failed through
 * crew or gear and was itself a re-order, begun no later after the failure before than the step
 * allows after its cue; or if the run ended before that time was up.
 */
final class Excuse {
  private final RunLog log;
  private final Fates fates;
  private final Starts starts;

  Excuse(RunLog log, Fates fates, Starts starts) {
    this.starts = starts;
    this.log = log;
    this.fates = fates;
  }

  boolean isExcused(Step step, Aim aim) {
    List<Told> attempts = fates.seeking(aim);
    if (attempts.isEmpty()) {
      return false;
    }
    Told last = attempts.get(attempts.size() - 1);
    Fate fate = fates.of(last, aim, log.lastTick());
    return fate.is(Fate.Kind.CREW_OR_GEAR)
        && (isReorder(step, aim, attempts) || isRunOver(step, fate));
  }

  private boolean isReorder(Step step, Aim aim, List<Told> attempts) {
    if (attempts.size() < 2) {
      return false;
    }
    Told last = attempts.get(attempts.size() - 1);
    Fate before = fates.of(attempts.get(attempts.size() - 2), aim, last.tick());
    boolean isInTime =
        step.within().map(w -> last.firstKeyTick() <= before.tick() + w.ticks()).orElse(true);
    return before.is(Fate.Kind.CREW_OR_GEAR) && isInTime;
  }

  private boolean isRunOver(Step step, Fate fate) {
    return step.within()
        .map(Window::ticks)
        .filter(w -> log.lastTick() <= fate.tick() + w)
        .isPresent();
  }

  /** By how much the first order that counts came late: that part is the trainee's. */
  Optional<Late> late(Step step, Aim aim) {
    return fates
        .earliest(aim, Integer.MAX_VALUE, log.lastTick(), false)
        .flatMap(o -> Late.of(step, Act.at(o.firstKeyTick(), List.of()), starts));
  }
}
