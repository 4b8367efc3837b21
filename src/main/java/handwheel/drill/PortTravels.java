package handwheel.drill;

import handwheel.plant.Plant;
import handwheel.plant.Port;
import handwheel.plant.StateWalker;
import org.jspecify.annotations.Nullable;

/**
 * Everything that is moving at the plant's ports. A later move of a port replaces a running one.
 */
final class PortTravels {
  private static final Port[] PORTS = Port.values();

  private final @Nullable Travel[] travels = new @Nullable Travel[PORTS.length];

  /** One port on its way; until {@code startTick} it stays where it is. */
  private record Travel(double from, double to, long startTick, long ticks) {
    double at(long now) {
      long gone = now - startTick;
      return gone >= ticks ? to : from + (to - from) * ((double) gone / ticks);
    }
  }

  /**
   * Starts a move.
   *
   * @param port what moves
   * @param from where it stands
   * @param to where it goes
   * @param startTick when it starts
   * @param ticks how long it takes; 0: at once
   */
  void start(Port port, double from, double to, long startTick, long ticks) {
    travels[port.ordinal()] = new Travel(from, to, startTick, ticks);
  }

  /** Leaves a port where it is. */
  void stop(Port port) {
    travels[port.ordinal()] = null;
  }

  /** Returns where a port is going, or where it stands. */
  double goal(Port port, Plant plant) {
    Travel t = travels[port.ordinal()];
    return t == null ? plant.position(port) : t.to;
  }

  boolean isMoving(Port port) {
    return travels[port.ordinal()] != null;
  }

  /** Puts every moving port where it is at this tick. */
  void apply(Plant plant, long now) {
    for (int i = 0; i < PORTS.length; i++) {
      Travel t = travels[i];
      if (t != null && now >= t.startTick) {
        plant.set(PORTS[i], t.at(now));
        if (now >= t.startTick + t.ticks) {
          travels[i] = null;
        }
      }
    }
  }

  void walk(StateWalker walker) {
    for (int i = 0; i < PORTS.length; i++) {
      Travel t = travels[i];
      if (t != null) {
        walker.visit("travel." + PORTS[i].id() + ".to", t.to);
        walker.visit("travel." + PORTS[i].id() + ".start", t.startTick);
        walker.visit("travel." + PORTS[i].id() + ".ticks", t.ticks);
      }
    }
  }
}
