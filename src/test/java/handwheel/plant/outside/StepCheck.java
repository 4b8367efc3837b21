package handwheel.plant.outside;

import handwheel.plant.AdaptiveTwin;
import handwheel.plant.Plant;
import handwheel.plant.PlantEvents;
import handwheel.plant.PlantNumbers;
import handwheel.plant.Port;
import handwheel.plant.Quantity;
import handwheel.plant.Starts;
import handwheel.units.Unit;
import java.util.List;

/**
 * The plant's step beside a library's adaptive integrator, half a minute after both fuel trips are
 * pulled at full power. All reference runs are compared in another test; this one is short enough
 * to be run with many changes.
 */
final class StepCheck {
  static final String NAME = "step in time";

  private StepCheck() {}

  static List<Figure> figures(PlantNumbers numbers) {
    Plant plant = Starts.plant("100", numbers);
    plant.set(Port.FUEL_TRIP_SATURATED, 0);
    plant.set(Port.FUEL_TRIP_SUPERHEATER, 0);
    AdaptiveTwin twin = new AdaptiveTwin(numbers);
    double pressure = 0;
    double level = 0;
    for (int i = 0; i < 20 * 30; i++) {
      plant.evaluate();
      Plant other = twin.beside(plant);
      pressure = Math.max(pressure, apart(plant, other, Quantity.DRUM_PRESSURE));
      level = Math.max(level, apart(plant, other, Quantity.DRUM_LEVEL));
      plant.applyRules(PlantEvents.NONE);
      twin.advance(plant);
      plant.advance();
    }
    return List.of(
        new Figure(NAME, "drum pressure apart, psi", Unit.PSIG.fromSi(pressure), 0, 2.5),
        new Figure(NAME, "level apart, in", Unit.INCH.fromSi(level), 0, 0.125));
  }

  private static double apart(Plant one, Plant other, Quantity quantity) {
    return Math.abs(one.value(quantity) - other.value(quantity));
  }
}
