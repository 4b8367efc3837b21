package handwheel.plant.outside;

import handwheel.plant.Plant;
import handwheel.plant.PlantNumbers;
import handwheel.plant.Port;
import handwheel.plant.Quantity;
import handwheel.plant.Starts;
import handwheel.units.Unit;
import java.util.ArrayList;
import java.util.List;

/**
 * The plant's steam leaks beside published formulas for choked steam. Both sides have the plant's
 * discharge coefficient of 0.85; a sharp edge has 0.84 by the books (from memory). Allowed: the 3.5
 * per cent by which the formulas themselves differ from steam in equilibrium.
 */
final class LeakCheck {
  static final String NAME = "choked leaks";
  private static final double HOLE_M2 = StrictMath.PI / 4 * 0.0254 * 0.0254;
  private static final double DISCHARGE = 0.85;
  private static final double SHARE = 0.035;

  private LeakCheck() {}

  static List<Figure> figures(PlantNumbers numbers) {
    List<Figure> figures = new ArrayList<>();
    for (double psig : new double[] {600, 150}) {
      saturated(numbers, psig, figures);
    }
    for (double fahrenheit : new double[] {850, 700}) {
      superheated(numbers, fahrenheit, figures);
    }
    mainRun(numbers, figures);
    return figures;
  }

  private static void saturated(PlantNumbers numbers, double psig, List<Figure> figures) {
    Plant plant = Starts.plant("100", numbers);
    double kelvin = SteamCheck.boilingK(Unit.PSIG.toSi(psig) + 101_325);
    plant.walk((name, value) -> name.equals("drum.temperature") ? kelvin : value);
    plant.set(Port.LEAK_SATURATED, HOLE_M2);
    plant.evaluate();
    double flow = plant.value(Quantity.LEAK_SATURATED_FLOW);
    double pa = plant.value(Quantity.DRUM_PRESSURE);
    String what = "saturated, " + (int) psig + " psig, kg/s, ";
    add(figures, what + "Napier", flow, ChokedFlow.napier(pa));
    add(figures, what + "API 520", flow, ChokedFlow.api(pa, 1));
  }

  private static void superheated(PlantNumbers numbers, double fahrenheit, List<Figure> figures) {
    Plant plant = Starts.plant("100", numbers);
    double kelvin = Unit.FAHRENHEIT.toSi(fahrenheit);
    plant.walk((name, value) -> name.equals("superheater.outlet.temperature") ? kelvin : value);
    plant.set(Port.LEAK_BEFORE_STOP, HOLE_M2);
    plant.evaluate();
    double flow = plant.value(Quantity.LEAK_BEFORE_STOP_FLOW);
    double pa = plant.value(Quantity.SUPERHEATER_OUTLET_PRESSURE);
    String what = "before the stop, " + (int) fahrenheit + " F, kg/s, ";
    add(
        figures,
        what + "API 520",
        flow,
        ChokedFlow.api(pa, ChokedFlow.superheatFactor(fahrenheit)));
    add(figures, what + "IAPWS-IF97", flow, ChokedFlow.equilibriumSuperheated(pa, kelvin));
  }

  private static void mainRun(PlantNumbers numbers, List<Figure> figures) {
    Plant plant = Starts.plant("100", numbers);
    plant.set(Port.LEAK_MAIN_RUN, HOLE_M2);
    plant.evaluate();
    double pa = plant.value(Quantity.MAIN_LINE_PRESSURE);
    double fahrenheit = Unit.FAHRENHEIT.fromSi(plant.value(Quantity.MAIN_LINE_TEMPERATURE));
    add(
        figures,
        "main steam line, kg/s, API 520",
        plant.value(Quantity.LEAK_MAIN_RUN_FLOW),
        ChokedFlow.api(pa, ChokedFlow.superheatFactor(fahrenheit)));
  }

  private static void add(List<Figure> figures, String what, double flow, double flux) {
    figures.add(Figure.relative(NAME, what, flow, flux * DISCHARGE * HOLE_M2, SHARE));
  }
}
