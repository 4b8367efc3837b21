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

  /** Starts every move; returns the ticks until the last is done. */
  long start(Scene scene, double hand) {
    long last = 0;
    for (PortMove move : moves()) {
      double from = scene.plant.position(move.port());
      double to = goal(move).orElseThrow();
      long ticks = ticks(move.port(), from, to, hand);
      long after = Engine.ticks(move.afterS());
      boolean isGradual = isGradual(move.port());
      scene.travels.start(
          move.port(),
          scene.plant,
          to,
          scene.now + after + (isGradual ? 0 : ticks),
          isGradual ? ticks : 0);
      last = Math.max(last, after + ticks);
    }
    return last;
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
