package handwheel.drill;

import handwheel.plant.Plant;
import handwheel.plant.Port;
import handwheel.plant.StateWalker;
import java.util.EnumMap;
import java.util.Iterator;
import java.util.Map;

/**
 * Everything that is moving at the plant's ports. A later move of a port replaces a running one.
 */
final class PortTravels {
  private final EnumMap<Port, Travel> travels = new EnumMap<>(Port.class);

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
   * @param port what moves; it starts from where it stands
   * @param plant whose port it is
   * @param to where it goes
   * @param startTick when it starts
   * @param ticks how long it takes; 0: at once
   */
  void start(Port port, Plant plant, double to, long startTick, long ticks) {
    travels.put(port, new Travel(plant.position(port), to, startTick, ticks));
  }

  /** Leaves a port where it is. */
  void stop(Port port) {
    travels.remove(port);
  }

  /** Puts every moving port where it is at this tick. */
  void apply(Plant plant, long now) {
    if (travels.isEmpty()) {
      return;
    }
    Iterator<Map.Entry<Port, Travel>> moving = travels.entrySet().iterator();
    while (moving.hasNext()) {
      Map.Entry<Port, Travel> next = moving.next();
      Travel t = next.getValue();
      if (now >= t.startTick) {
        plant.set(next.getKey(), t.at(now));
        if (now >= t.startTick + t.ticks) {
          moving.remove();
        }
      }
    }
  }

  void walk(StateWalker walker) {
    for (Map.Entry<Port, Travel> e : travels.entrySet()) {
      String name = "travel." + e.getKey().id();
      walker.visit(name + ".to", e.getValue().to);
      walker.visit(name + ".start", e.getValue().startTick);
      walker.visit(name + ".ticks", e.getValue().ticks);
    }
  }
}
