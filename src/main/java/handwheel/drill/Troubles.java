package handwheel.drill;

import handwheel.casualty.Fault;
import handwheel.plant.Port;
import handwheel.plant.StateWalker;
import handwheel.ship.Control;
import handwheel.ship.Fitting;
import handwheel.ship.PortMove;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What is wrong with the ship's fittings and with the gear that works them. */
final class Troubles {
  private final List<Fault.OfFitting> fittings = new ArrayList<>();
  private final List<Fault.OfGear> gears = new ArrayList<>();

  /** Ports that no hand moves any more, for those who hold a value tick by tick. */
  private final EnumSet<Port> jammed = EnumSet.noneOf(Port.class);

  void add(Fault.OfFitting fault, Scene scene) {
    fittings.add(fault);
    Fitting fitting = scene.ship.fitting(fault.fitting()).orElseThrow();
    if (fault.trouble() == Fault.FittingTrouble.DEAD) {
      for (PortMove move : fitting.stopMoves()) {
        scene.travels.stop(move.port());
        scene.plant.set(move.port(), move.to().orElseThrow());
      }
    } else if (fault.trouble() == Fault.FittingTrouble.STUCK && fault.figure().isEmpty()) {
      ports(fitting).forEach(scene.travels::stop);
      jammed.addAll(ports(fitting));
    }
  }

  void add(Fault.OfGear fault) {
    gears.add(fault);
  }

  void remove(Fault.OfFitting fault, Scene scene) {
    fittings.remove(fault);
    jammed.removeAll(ports(scene.ship.fitting(fault.fitting()).orElseThrow()));
  }

  void remove(Fault.OfGear fault) {
    gears.remove(fault);
  }

  private static List<Port> ports(Fitting fitting) {
    return fitting.acts().values().stream()
        .flatMap(List::stream)
        .map(PortMove::port)
        .distinct()
        .toList();
  }

  private Optional<Fault.OfFitting> with(Fitting fitting, Fault.FittingTrouble trouble) {
    return fittings.stream()
        .filter(f -> f.trouble() == trouble && f.fitting().equals(fitting.id()))
        .findFirst();
  }

  /** Returns how many times longer work on a fitting takes. */
  double slowness(Fitting fitting) {
    return with(fitting, Fault.FittingTrouble.STIFF).map(f -> f.figure().orElse(1)).orElse(1.0);
  }

  /** Returns whether gear turns and moves nothing. */
  boolean isGearBroken(Fitting fitting, Control control) {
    return gears.stream()
        .anyMatch(g -> g.fitting().equals(fitting.id()) && g.place().equals(control.place()));
  }

  /** Returns whether a machine will not start. */
  boolean isDead(Fitting fitting) {
    return with(fitting, Fault.FittingTrouble.DEAD).isPresent();
  }

  /** Returns where a fitting on its way comes to stand. */
  double reached(Fitting fitting, double from, double to) {
    Optional<Fault.OfFitting> stuck = with(fitting, Fault.FittingTrouble.STUCK);
    if (stuck.isEmpty()) {
      return to;
    }
    OptionalDouble jam = stuck.get().figure();
    if (jam.isEmpty()) {
      return from;
    }
    double at = jam.getAsDouble();
    boolean isOnTheWay = (from - at) * (to - at) <= 0;
    return isOnTheWay ? at : to;
  }

  /** Returns whether a hand that holds a value with a port cannot move it. */
  boolean isJammed(Port port) {
    return jammed.contains(port);
  }

  void walk(StateWalker walker) {
    walker.visit("troubles.fittings", fittings.size());
    walker.visit("troubles.gears", gears.size());
  }
}
