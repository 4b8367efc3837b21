package handwheel.drill;

import handwheel.plant.Plant;
import handwheel.plant.Port;
import handwheel.plant.Quantity;

/** The flow out of the plant's holes. */
final class LeakFlows {
  /** A jet weaker than this cuts nobody, kg/s; engineering estimate (400 lb/h). */
  static final double JET_KG_PER_S = 0.05;

  private LeakFlows() {}

  /** Returns the flow out of a hole, kg/s; 0 for a port that is none. */
  static double kgPerS(Plant plant, Port hole) {
    if (hole == Port.LEAK_MAIN_RUN) {
      return plant.value(Quantity.LEAK_MAIN_RUN_FLOW);
    }
    if (hole == Port.LEAK_BEFORE_STOP) {
      return plant.value(Quantity.LEAK_BEFORE_STOP_FLOW);
    }
    if (hole == Port.LEAK_SATURATED) {
      return plant.value(Quantity.LEAK_SATURATED_FLOW);
    }
    if (hole == Port.ECONOMIZER_LEAK) {
      return plant.value(Quantity.ECONOMIZER_LEAK_FLOW);
    }
    return hole == Port.TUBE_RUPTURE ? plant.value(Quantity.TUBE_FLOW) : 0;
  }
}
