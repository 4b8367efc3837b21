package handwheel.drill;

import static java.util.Map.entry;
import static java.util.Objects.requireNonNull;

import handwheel.plant.Plant;
import handwheel.plant.Quantity;
import handwheel.units.Unit;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * A column of a reference run: how the plant shows it and how close it has to be.
 *
 * @param name name and unit as printed
 * @param reading figure in the printed unit
 */
record Column(String name, ToDoubleFunction<Plant> reading) {
  private static final Map<String, ToDoubleFunction<Plant>> READINGS =
      Map.ofEntries(
          entry("drum p", psig(Quantity.DRUM_PRESSURE)),
          entry("superheater out p", psig(Quantity.SUPERHEATER_OUTLET_PRESSURE)),
          entry("line p", psig(Quantity.MAIN_LINE_PRESSURE)),
          entry("boiler", f(Quantity.DRUM_TEMPERATURE)),
          entry("level", in(Quantity.DRUM_LEVEL, Unit.INCH)),
          entry("steam total", klb(Quantity.DRUM_STEAM_FLOW)),
          entry("superheater flow", klb(Quantity.SUPERHEATER_FLOW)),
          entry("auxiliary steam", klb(Quantity.AUXILIARY_FLOW)),
          entry("back-feed", klb(Quantity.BULKHEAD_STOP_FLOW)),
          entry("leak", Column::mainLeak),
          entry("safeties", klb(Quantity.SAFETY_FLOW)),
          entry("tube leak", klb(Quantity.TUBE_FLOW)),
          entry("feed", klb(Quantity.FEED_FLOW)),
          entry("check", one(Quantity.FEED_CHECK_POSITION)),
          entry("superheater out", f(Quantity.SUPERHEATER_OUTLET_TEMPERATURE)),
          entry("superheater metal", f(Quantity.SUPERHEATER_METAL_TEMPERATURE)),
          entry("superheater damage", one(Quantity.SUPERHEATER_DAMAGE)),
          entry("dry", percent(Quantity.DRUM_UNCOVERED)),
          entry("tube metal", f(Quantity.TUBE_TEMPERATURE)),
          entry("tube damage", one(Quantity.TUBE_DAMAGE)),
          entry("header", psig(Quantity.FUEL_HEADER_PRESSURE)),
          entry("governor set", psig(Quantity.FUEL_GOVERNOR_PRESSURE)),
          entry("burner line S", psig(Quantity.FUEL_BURNER_LINE_SATURATED_PRESSURE)),
          entry("burner line H", psig(Quantity.FUEL_BURNER_LINE_SUPERHEATER_PRESSURE)),
          entry("fuel", in(Quantity.FUEL_FLOW, Unit.LB_PER_H)),
          entry("air in suction", percent(Quantity.FUEL_AIR_IN_SUCTION)),
          entry("water at burners", percent(Quantity.FUEL_WATER_AT_BURNERS)),
          entry("lit S", one(Quantity.FURNACE_SATURATED_BURNERS_LIT)),
          entry("lit H", one(Quantity.FURNACE_SUPERHEATER_BURNERS_LIT)),
          entry("lambda S", one(Quantity.FURNACE_SATURATED_AIR_RATIO)),
          entry("lambda H", one(Quantity.FURNACE_SUPERHEATER_AIR_RATIO)),
          entry("black smoke", percent(Quantity.STACK_BLACK)),
          entry("white smoke", percent(Quantity.STACK_WHITE)),
          entry("gas S", f(Quantity.FURNACE_SATURATED_GAS_TEMPERATURE)),
          entry("gas H", f(Quantity.FURNACE_SUPERHEATER_GAS_TEMPERATURE)),
          entry("brick S", f(Quantity.FURNACE_SATURATED_BRICK_TEMPERATURE)),
          entry("brick H", f(Quantity.FURNACE_SUPERHEATER_BRICK_TEMPERATURE)),
          entry("brick damage S", one(Quantity.FURNACE_SATURATED_BRICK_DAMAGE)),
          entry("brick damage H", one(Quantity.FURNACE_SUPERHEATER_BRICK_DAMAGE)),
          entry("vapour S", one(Quantity.FURNACE_SATURATED_VAPOUR_MASS)),
          entry("vapour H", one(Quantity.FURNACE_SUPERHEATER_VAPOUR_MASS)),
          entry("pool S", one(Quantity.FURNACE_SATURATED_POOL_MASS)),
          entry("pool H", one(Quantity.FURNACE_SUPERHEATER_POOL_MASS)),
          entry("blower 1 valve", one(Quantity.BLOWER_1_STEAM_VALVE_POSITION)),
          entry("blower 2 valve", one(Quantity.BLOWER_2_STEAM_VALVE_POSITION)),
          entry("blower 1 speed", one(Quantity.BLOWER_1_SPEED)),
          entry("blower 2 speed", one(Quantity.BLOWER_2_SPEED)),
          entry("water in 1", in(Quantity.BLOWER_1_WATER_MASS, Unit.POUND)),
          entry("water in 2", in(Quantity.BLOWER_2_WATER_MASS, Unit.POUND)),
          entry("air box", in(Quantity.AIR_BOX_PRESSURE, Unit.INCH_WATER)),
          entry("furnace p", in(Quantity.FURNACE_PRESSURE, Unit.INCH_WATER)),
          entry("air", klb(Quantity.AIR_FLOW)),
          entry("water to furnaces", in(Quantity.WATER_TO_FURNACES_FLOW, Unit.LB_PER_S)),
          entry("upper", f(Quantity.SPACE_UPPER_TEMPERATURE)),
          entry("lower", f(Quantity.SPACE_LOWER_TEMPERATURE)),
          entry("upper vapour", percent(Quantity.SPACE_UPPER_VAPOUR)),
          entry("lower vapour", percent(Quantity.SPACE_LOWER_VAPOUR)),
          entry("upper dose", one(Quantity.SPACE_UPPER_DOSE)),
          entry("lower dose", one(Quantity.SPACE_LOWER_DOSE)),
          entry("upper wall", f(Quantity.SPACE_UPPER_WALL_TEMPERATURE)),
          entry("fire", in(Quantity.FIRE_HEAT, Unit.MEGAWATT)),
          entry("upper O2", percent(Quantity.SPACE_UPPER_OXYGEN)),
          entry("upper soot", plant -> 1000 * plant.value(Quantity.SPACE_UPPER_SOOT)),
          entry("bilge", in(Quantity.BILGE_DEPTH, Unit.FOOT)));

  static Column of(String header) {
    String name = header.substring(0, header.indexOf(" ["));
    return new Column(header, requireNonNull(READINGS.get(name), header));
  }

  double read(Plant plant) {
    return reading.applyAsDouble(plant);
  }

  /**
   * A hundredth of a psi and of a degree F, a thousandth of an inch, a ten-thousandth of other
   * figures: the rounding of the printed runs, not the truth of the model.
   */
  double allows(double expected) {
    if (name.endsWith("[psig]") || name.endsWith("[F]")) {
      return 0.01;
    }
    if (name.endsWith("[in]")) {
      return 0.001;
    }
    return name.startsWith("lit") ? 0 : 1e-4 * Math.abs(expected) + 1e-7;
  }

  private static double mainLeak(Plant plant) {
    return Unit.KLB_PER_H.fromSi(
        plant.value(Quantity.LEAK_BEFORE_STOP_FLOW)
            + plant.value(Quantity.LEAK_MAIN_RUN_FLOW)
            + plant.value(Quantity.LEAK_SATURATED_FLOW));
  }

  private static ToDoubleFunction<Plant> in(Quantity quantity, Unit unit) {
    return plant -> quantity.in(unit, plant.value(quantity));
  }

  private static ToDoubleFunction<Plant> one(Quantity quantity) {
    return plant -> plant.value(quantity);
  }

  private static ToDoubleFunction<Plant> percent(Quantity quantity) {
    return in(quantity, Unit.PERCENT);
  }

  private static ToDoubleFunction<Plant> klb(Quantity quantity) {
    return in(quantity, Unit.KLB_PER_H);
  }

  private static ToDoubleFunction<Plant> f(Quantity quantity) {
    return in(quantity, Unit.FAHRENHEIT);
  }

  private static ToDoubleFunction<Plant> psig(Quantity quantity) {
    return plant -> Math.max(0, quantity.in(Unit.PSIG, plant.value(quantity)));
  }
}
