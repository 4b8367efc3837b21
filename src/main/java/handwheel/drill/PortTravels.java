package handwheel.drill;

import handwheel.plant.Plant;
import handwheel.plant.Port;
import handwheel.plant.StateWalker;
import java.util.ArrayDeque;
import java.util.EnumMap;
import java.util.Iterator;
import java.util.Map;

/**
 * Everything that is moving at the plant's ports. A move replaces what the port would still be
 * doing when it starts; what is done by then is done, as when a torch goes in and comes out again.
 */
final class PortTravels {
  private final EnumMap<Port, ArrayDeque<Travel>> travels = new EnumMap<>(Port.class);

  /** One port on its way; until {@code startTick} it stays where it is. */
  private record Travel(double from, double to, long startTick, long ticks) {
    double at(long now) {
      long gone = now - startTick;
      return gone >= ticks ? to : from + (to - from) * ((double) gone / ticks);
    }

    long endTick() {
      return startTick + ticks;
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
    ArrayDeque<Travel> all = travels.computeIfAbsent(port, p -> new ArrayDeque<>());
    while (!all.isEmpty() && all.getLast().endTick() > startTick) {
      all.removeLast();
    }
    double from = all.isEmpty() ? plant.position(port) : all.getLast().to;
    all.addLast(new Travel(from, to, startTick, ticks));
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
    Iterator<Map.Entry<Port, ArrayDeque<Travel>>> moving = travels.entrySet().iterator();
    while (moving.hasNext()) {
      Map.Entry<Port, ArrayDeque<Travel>> next = moving.next();
      ArrayDeque<Travel> all = next.getValue();
      Travel t = all.getFirst();
      if (now >= t.startTick) {
        plant.set(next.getKey(), t.at(now));
        if (now >= t.endTick()) {
          all.removeFirst();
        }
      }
      if (all.isEmpty()) {
        moving.remove();
      }
    }
  }

  void walk(StateWalker walker) {
    for (Map.Entry<Port, ArrayDeque<Travel>> e : travels.entrySet()) {
      String name = "travel." + e.getKey().id();
      for (Travel t : e.getValue()) {
        walker.visit(name + ".to", t.to);
        walker.visit(name + ".start", t.startTick);
        walker.visit(name + ".ticks", t.ticks);
      }
    }
  }
}
