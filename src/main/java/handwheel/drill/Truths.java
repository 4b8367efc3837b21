package handwheel.drill;

import handwheel.casualty.Truth;
import handwheel.plant.Port;
import java.util.SortedMap;
import java.util.TreeMap;

/** Looks up the true values a script may depend on. */
final class Truths {
  private final Scene scene;
  private final SortedMap<String, Port> leaks = new TreeMap<>();

  Truths(Scene scene) {
    this.scene = scene;
  }

  /** Notes the port a fault moves. */
  void fault(String id, Port port) {
    leaks.put(id, port);
  }

  /** Returns the value, SI; a leak that has not begun flows 0. */
  double value(Truth truth) {
    if (truth instanceof Truth.Of of) {
      return scene.plant.value(of.quantity());
    }
    Port hole = leaks.get(((Truth.LeakFlow) truth).fault());
    return hole == null ? 0 : LeakFlows.kgPerS(scene.plant, hole);
  }
}
