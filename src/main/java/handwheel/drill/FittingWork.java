package handwheel.drill;

import handwheel.plant.Port;
import handwheel.ship.Control;
import handwheel.ship.Fitting;
import handwheel.ship.PortMove;
import handwheel.ship.Setting;
import handwheel.ship.Verb;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One man's work on one fitting: how long it takes and what it moves.
 *
 * @param fitting what he works
 * @param control where and how
 * @param verb what he does
 * @param setting what to set it to
 */
record FittingWork(Fitting fitting, Control control, Verb verb, Optional<Setting> setting) {
  /** How long a man tries a fitting that will not move. Engineering estimate. */
  private static final long TRIES_TICKS = Engine.ticks(5);

  /** Returns whether the setting, if one is needed, is one the fitting can take. */
  boolean canBeDone() {
    return !moves().isEmpty() && moves().stream().allMatch(m -> goal(m).isPresent());
  }

  private List<PortMove> moves() {
    return fitting.moves(verb);
  }

  /** Returns where a move goes, SI or index of a choice; empty if the setting does not fit. */
  OptionalDouble goal(PortMove move) {
    OptionalDouble to = move.to().isPresent() ? move.to() : Settings.of(setting, move.port());
    return to.isPresent() && move.port().accepts(to.getAsDouble()) ? to : OptionalDouble.empty();
  }

  /** Starts every move; returns the ticks until the last is done, or found not to go. */
  long start(Scene scene, double hand) {
    double slowness = scene.troubles.slowness(fitting);
    long last = 0;
    for (PortMove move : moves()) {
      double from = scene.plant.position(move.port());
      double goal = goal(move).orElseThrow();
      double to = reached(scene, from, goal);
      long ticks = ticks(move.port(), from, to, hand * slowness);
      long after = Engine.ticks(move.afterS());
      if (to != from || goal == from) {
        boolean isGradual = isGradual(move.port());
        long startTick = scene.now + after + (isGradual ? 0 : ticks);
        scene.travels.start(move.port(), scene.plant, to, startTick, isGradual ? ticks : 0);
      }
      last = Math.max(last, after + ticks + (to == goal ? 0 : TRIES_TICKS));
    }
    return isGearBroken(scene) ? Math.max(last, estimate(scene, hand)) : last;
  }

  /** Returns where a move comes to stand: its goal, unless something is wrong. */
  private double reached(Scene scene, double from, double goal) {
    boolean isIdle = isGearBroken(scene) || isDeadFor(scene, goal);
    return isIdle ? from : scene.troubles.reached(fitting, from, goal);
  }

  private boolean isGearBroken(Scene scene) {
    return scene.troubles.isGearBroken(fitting, control);
  }

  /** A machine that is dead can still be told to stop. */
  private boolean isDeadFor(Scene scene, double goal) {
    return scene.troubles.isDead(fitting)
        && fitting.stopMoves().stream().noneMatch(m -> m.to().orElse(-1) == goal);
  }

  /** Returns what a man says whose work came to nothing; empty if it was done. */
  Optional<String> failure(Scene scene) {
    if (isGearBroken(scene)) {
      return Optional.of("The gear turns and nothing moves.");
    }
    for (PortMove move : moves()) {
      double goal = goal(move).orElseThrow();
      if (isDeadFor(scene, goal)) {
        return Optional.of("It will not start.");
      }
      double at = scene.plant.position(move.port());
      if (scene.troubles.reached(fitting, at, goal) != goal) {
        return Optional.of("It is stuck.");
      }
    }
    return Optional.empty();
  }

  /** Estimates the ticks from hand on to done. */
  long estimate(Scene scene, double hand) {
    long last = 0;
    for (PortMove move : moves()) {
      double from = scene.plant.position(move.port());
      long ticks = ticks(move.port(), from, goal(move).orElse(from), hand);
      last = Math.max(last, Engine.ticks(move.afterS()) + ticks);
    }
    return last;
  }

  private long ticks(Port port, double from, double to, double hand) {
    double share = 1;
    if (control.kind().isTravelled() && isGradual(port)) {
      double range = port.kind() == Port.Kind.SETTING ? port.max() - port.min() : 1;
      share = Math.abs(to - from) / range;
    }
    return Math.max(1, Engine.ticks(control.timeS() * share * hand));
  }

  private static boolean isGradual(Port port) {
    return port.kind() == Port.Kind.FRACTION || port.kind() == Port.Kind.SETTING;
  }

  /** Takes the hand off: what was moving stays where it is, a pulled trip falls on. */
  void letGo(Scene scene) {
    if (control.kind().isTravelled()) {
      moves().forEach(m -> scene.travels.stop(m.port()));
    }
  }

  /** Returns the first port's position in thousandths. */
  int milli(Scene scene) {
    return (int) StrictMath.floor(scene.plant.position(moves().get(0).port()) * 1000 + 0.5);
  }
}
