package handwheel.app;

import handwheel.casualty.Casualty;
import handwheel.proof.Outcome;
import handwheel.proof.Trial;
import handwheel.proof.Trials;
import handwheel.ship.Ship;
import java.util.List;
import java.util.function.Supplier;

/** Plays trials side by side, as many as the machine has cores; the order of results is fixed. */
final class Workbench implements Trials {
  private final Casualty casualty;
  private final Ship ship;

  Workbench(Casualty casualty, Ship ship) {
    this.casualty = casualty;
    this.ship = ship;
  }

  @Override
  public List<Outcome> play(List<Trial> trials) {
    return new Cores()
        .all(
            trials.stream()
                .<Supplier<Outcome>>map(t -> () -> Outcome.of(casualty, ship, t))
                .toList());
  }
}
