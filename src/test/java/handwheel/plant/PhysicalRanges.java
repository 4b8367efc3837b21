package handwheel.plant;

import handwheel.units.Unit;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * What no state or value of a plant may ever be, whatever is done to it: no number, a negative
 * mass, a share beyond 0 and 1, a temperature nothing here can reach. Wider than where the
 * equations hold.
 */
final class PhysicalRanges {
  /** Ends of state names, the first that fits counts. */
  private static final List<Range> STATES =
      List.of(
          new Range("drum.temperature", 273, 647.096), // ice to critical point, IAPWS R7-97
          new Range("gas.temperature", 200, 2_600), // below the flame temperature of oil in air
          new Range("brick.temperature", 250, 2_600),
          new Range("brick-core.temperature", 250, 2_600),
          new Range("metal.temperature", 250, 2_600),
          new Range("tube.temperature", 250, 2_600),
          new Range("outlet.temperature", 250, 2_600),
          new Range("fuel.temperature", 250, 500),
          new Range("deaerating-tank.temperature", 273, 450),
          new Range("temperature", 250, 1_600), // air and steel of the fire room
          new Range("drum.water-volume", 0, 9.9),
          new Range("drum.riser-steam", 0, 2.6),
          new Range("drum.bubbles", 0, 6.3),
          new Range("main-line.pressure", 101_325, 8e6),
          new Range("air-box.pressure", -15_000, 50_000),
          new Range("fuel.header.pressure", 0, 5e6),
          new Range("blower.1.speed", 0, 2),
          new Range("blower.2.speed", 0, 2),
          new Range("pump.speed", 0, 1),
          new Range("throttle.opening", 0, 1),
          new Range("vapour-mass-fraction", 0, 1),
          new Range("unused-air", 0, 1.0001),
          new Range("oxygen", 0, 0.2321),
          new Range("stack.black", 0, 1),
          new Range("stack.white", 0, 1),
          new Range("fuel.air-in-suction", 0, 1),
          new Range("fuel.water-in-strainer", 0, 1),
          new Range("fuel.water-in-heater", 0, 1),
          new Range("fuel.water-at-burners", 0, 1),
          new Range("soot", 0, 1),
          new Range("fire.heat", 0, 1e9),
          new Range("", 0, 1e9)); // masses, doses, damages, volumes

  private static final Set<Quantity> SIGNED =
      EnumSet.of(
          Quantity.BLOWER_1_AIR_FLOW,
          Quantity.BLOWER_2_AIR_FLOW,
          Quantity.AIR_BOX_PRESSURE,
          Quantity.DRUM_LEVEL,
          Quantity.SUPERHEATER_HEAT,
          Quantity.BOILER_EVAPORATION_HEAT,
          Quantity.ECONOMIZER_HEAT,
          Quantity.DRUM_HEATING_RATE,
          Quantity.FURNACE_SATURATED_BRICK_HEATING_RATE,
          Quantity.FURNACE_SUPERHEATER_BRICK_HEATING_RATE);

  private static final Range[] OF_STATE = ofStates();
  private static final Quantity[] QUANTITIES = Quantity.values();

  private PhysicalRanges() {}

  private record Range(String end, double low, double high) {}

  private static Range[] ofStates() {
    return Starts.plant("50").continuous().stream()
        .map(s -> STATES.stream().filter(r -> s.name.endsWith(r.end())).findFirst().orElseThrow())
        .toArray(Range[]::new);
  }

  /** Adds a line for each state or value that cannot be. */
  static void check(Plant plant, List<String> wrong) {
    int i = 0;
    for (State state : plant.continuous()) {
      Range range = OF_STATE[i++];
      if (!(state.x >= range.low() && state.x <= range.high())) {
        wrong.add(state.name + " is " + state.x);
      }
    }
    for (Quantity quantity : QUANTITIES) {
      double value = plant.value(quantity);
      if (!(value >= 0 && value < Double.POSITIVE_INFINITY) && !isFairBelowZero(quantity, value)) {
        wrong.add(quantity.id() + " is " + value);
      }
    }
  }

  private static boolean isFairBelowZero(Quantity quantity, double value) {
    boolean isRate = quantity.id().endsWith("heating-rate");
    return Double.isFinite(value)
        && (isRate || SIGNED.contains(quantity) || quantity.unit() == Unit.KELVIN);
  }
}
