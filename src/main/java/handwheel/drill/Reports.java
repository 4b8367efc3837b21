package handwheel.drill;

import handwheel.logbook.Entry;
import handwheel.plant.StateWalker;
import handwheel.ship.Order;
import java.util.ArrayList;
import java.util.List;

/** Reports on their way: one breath each. */
final class Reports {
  private static final long BREATH_TICKS = Engine.ticks(4);

  private final Scene scene;
  private final List<OnItsWay> onTheirWay = new ArrayList<>();

  private record OnItsWay(Order.Report report, int n, long atTick) {}

  Reports(Scene scene) {
    this.scene = scene;
  }

  boolean pass(Order.Report report, int n) {
    return onTheirWay.add(new OnItsWay(report, n, scene.now + BREATH_TICKS));
  }

  void tick() {
    for (OnItsWay o : List.copyOf(onTheirWay)) {
      if (scene.now >= o.atTick()) {
        onTheirWay.remove(o);
        scene.log(new Entry.Passed(scene.now, o.n(), o.report().message(), o.report().to()));
      }
    }
  }

  void walk(StateWalker walker) {
    for (OnItsWay o : onTheirWay) {
      walker.visit("report.n", o.n());
      walker.visit("report.at", o.atTick());
    }
  }
}
