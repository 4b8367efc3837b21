package handwheel.plant.outside;

import handwheel.plant.Inside;
import handwheel.plant.Plant;
import handwheel.plant.PlantEvents;
import handwheel.plant.PlantNumbers;
import handwheel.plant.Quantity;
import handwheel.plant.Starts;
import handwheel.units.Unit;
import java.util.ArrayList;
import java.util.List;

/** Oil, air and heat of the furnaces beside published figures of combustion. */
final class FireCheck {
  static final String OIL = "oil and air";
  static final String GAS = "furnace gas";
  static final String BALANCE = "heat balance";

  /**
   * Casing loss at full load, per cent, the same heat at every load and so twice the share at half
   * load; what is unburned or not counted, per cent. Round figures for such a boiler from memory.
   */
  private static final double CASING_AT_FULL_LOAD = 0.5;

  private static final double NOT_COUNTED = 1;

  private FireCheck() {}

  static List<Figure> figures(PlantNumbers numbers) {
    List<Figure> figures = new ArrayList<>();
    for (String load : List.of("25", "50", "100")) {
      Plant plant = Starts.plant(load, numbers);
      for (int i = 0; i < 20 * 60; i++) {
        plant.evaluate();
        plant.applyRules(PlantEvents.NONE);
        plant.advance();
      }
      plant.evaluate();
      if (load.equals("100")) {
        oil(plant, figures);
        gas(plant, figures);
      }
      balance(plant, load, figures);
    }
    return figures;
  }

  private static void oil(Plant plant, List<Figure> figures) {
    double air = Combustion.airForDistillate();
    figures.add(Figure.relative(OIL, "air for oil, kg/kg", Inside.airForOil(plant), air, 0.015));
    double heat = Inside.heatOfOilJPerKg(plant) / 1e6;
    double outside = Combustion.netHeat(845, 0.004);
    figures.add(Figure.relative(OIL, "net heat, MJ/kg", heat, outside, 0.005));
  }

  /** What the gas of each furnace holds above 298 K at the temperature it has, kJ/kg. */
  private static void gas(Plant plant, List<Figure> figures) {
    double capacity = Inside.gasJPerKgK(plant);
    gas(
        capacity,
        plant.value(Quantity.FURNACE_SATURATED_GAS_TEMPERATURE),
        plant.value(Quantity.FURNACE_SATURATED_AIR_RATIO),
        figures);
    gas(
        capacity,
        plant.value(Quantity.FURNACE_SUPERHEATER_GAS_TEMPERATURE),
        plant.value(Quantity.FURNACE_SUPERHEATER_AIR_RATIO),
        figures);
  }

  private static void gas(double capacity, double kelvin, double ratio, List<Figure> figures) {
    String what = "heat in the gas at " + Math.round(kelvin) + " K, kJ/kg";
    double outside = FlueGas.enthalpyJPerKg(ratio, kelvin) / 1000;
    figures.add(Figure.relative(GAS, what, capacity * (kelvin - 298) / 1000, outside, 0.04));
  }

  /** Heat into water and steam over heat of the oil, against what the stack takes. */
  private static void balance(Plant plant, String load, List<Figure> figures) {
    double useful =
        plant.value(Quantity.BOILER_EVAPORATION_HEAT)
            + plant.value(Quantity.ECONOMIZER_HEAT)
            + plant.value(Quantity.SUPERHEATER_HEAT);
    double oil = plant.value(Quantity.FUEL_FLOW);
    double efficiency = 100 * useful / (oil * Combustion.netHeat(845, 0.004) * 1e6);
    double excess = plant.value(Quantity.AIR_FLOW) / (oil * Combustion.airForDistillate()) - 1;
    double stackC = Unit.CELSIUS.fromSi(plant.value(Quantity.STACK_TEMPERATURE));
    double loss = Combustion.stackLossPercent(stackC, 25, Combustion.oxygenPercent(excess));
    double other = NOT_COUNTED + CASING_AT_FULL_LOAD * 100 / Integer.parseInt(load);
    figures.add(
        new Figure(BALANCE, load + " % load, efficiency %", efficiency, 100 - loss - other, 1.5));
  }
}
