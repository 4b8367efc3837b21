package handwheel.scoring;

import handwheel.casualty.Step;
import handwheel.casualty.StepTest;
import handwheel.logbook.Entry;
import handwheel.ship.Fitting;
import handwheel.ship.Ship;
import handwheel.ship.Verb;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Fittings that were worked though no step asks for it. Each stands in for at most one step: a like
 * fitting, taken the same way.
 */
final class Strays {
  private final Ship ship;
  private final Movements movements;
  private final List<String> shut;
  private final List<String> open;

  Strays(List<Step> steps, Ship ship, RunLog log) {
    this.ship = ship;
    this.movements = new Movements(ship, log);
    this.shut = worked(steps, log, Bearing.SHUT);
    this.open = worked(steps, log, Bearing.OPEN);
  }

  private List<String> worked(List<Step> steps, RunLog log, Bearing bearing) {
    List<String> all = new ArrayList<>();
    log.all(Entry.Moved.class)
        .filter(m -> m.n() > 0)
        .map(Entry.Moved::fitting)
        .distinct()
        .filter(f -> steps.stream().noneMatch(s -> asksFor(s, f, bearing)))
        .filter(f -> movements.reaching(f, bearing).stream().anyMatch(m -> m.n() > 0))
        .forEach(all::add);
    return all;
  }

  private static boolean asksFor(Step step, String fitting, Bearing bearing) {
    return step.test() instanceof StepTest.FittingIs f
        && Bearing.wanted(f.isOpen()) == bearing
        && f.fittings().contains(fitting);
  }

  /** Takes a stray for a step, if there is one. */
  boolean isTakenFor(Step step) {
    if (!(step.test() instanceof StepTest.FittingIs f)) {
      return false;
    }
    List<String> free = f.isOpen() ? open : shut;
    Optional<String> stray =
        free.stream().filter(s -> f.fittings().stream().anyMatch(w -> isAlike(s, w))).findFirst();
    stray.ifPresent(free::remove);
    return stray.isPresent();
  }

  private boolean isAlike(String one, String other) {
    return !one.equals(other) && verbs(one).isPresent() && verbs(one).equals(verbs(other));
  }

  private Optional<Set<Verb>> verbs(String fitting) {
    return ship.fitting(fitting).map((Fitting f) -> f.acts().keySet());
  }
}
