package handwheel.plant.outside;

import handwheel.plant.DrumInputs;
import handwheel.plant.Plant;
import handwheel.plant.PlantNumbers;
import handwheel.plant.Port;
import handwheel.plant.Quantity;
import handwheel.plant.Starts;
import handwheel.units.Unit;
import handwheel.water.SaturationTable;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/**
 * A valve of the whole plant moved at once with nobody at the others, and the four-state model of
 * the literature beside its drum: same sizes, same heat, steam and feed at every tick.
 */
final class ShipDrumRun {
  private static final SaturationTable TABLE = SaturationTable.standard();

  /** Each second: pressure psig and level above the first, in, of the plant and of the model. */
  final List<double[]> seconds = new ArrayList<>();

  ShipDrumRun(PlantNumbers numbers, String start, Consumer<Plant> change, int lengthS) {
    Plant plant = Starts.plant(start, numbers);
    plant.evaluate();
    AstromBell model = rest(plant);
    double level = plant.value(Quantity.DRUM_LEVEL);
    double modelLevel = model.levelM();
    change.accept(plant);
    for (int i = 0; i <= 20 * lengthS; i++) {
      plant.evaluate();
      if (i % 20 == 0) {
        seconds.add(
            new double[] {
              psig(plant.value(Quantity.DRUM_PRESSURE)),
              psig(model.pressurePa()),
              Unit.INCH.fromSi(plant.value(Quantity.DRUM_LEVEL) - level),
              Unit.INCH.fromSi(model.levelM() - modelLevel)
            });
      }
      model.step(inputs(plant));
      plant.advance();
    }
  }

  /** A load step: the throttle ordered to a setting at once. */
  static ShipDrumRun throttle(PlantNumbers numbers, String start, double to, int lengthS) {
    return new ShipDrumRun(numbers, start, plant -> plant.set(Port.THROTTLE_ORDERED, to), lengthS);
  }

  private static double psig(double pa) {
    return Unit.PSIG.fromSi(pa - 101_325);
  }

  private static AstromBell rest(Plant plant) {
    AstromBell model = new AstromBell(DrumSizes.SHIP);
    double[] found = new double[2];
    plant.walk(
        (name, value) -> {
          if (name.equals("drum.water-volume")) {
            found[0] = value;
          } else if (name.equals("drum.bubbles")) {
            found[1] = value;
          }
          return value;
        });
    model.rest(plant.value(Quantity.DRUM_TEMPERATURE), found[0], found[1], inputs(plant));
    return model;
  }

  private static DrumInputs inputs(Plant plant) {
    double feed = plant.value(Quantity.FEED_FLOW);
    double warmed = plant.value(Quantity.ECONOMIZER_HEAT) / Math.max(feed, 1e-6);
    return new DrumInputs(
        plant.value(Quantity.BOILER_EVAPORATION_HEAT),
        plant.value(Quantity.DRUM_STEAM_FLOW),
        feed,
        TABLE.waterEnthalpyJPerKg(plant.value(Quantity.FEED_TEMPERATURE)) + warmed);
  }

  /** Index of the farthest level within the first half minute. */
  int peakS(int column) {
    int peak = 0;
    for (int i = 0; i < Math.min(30, seconds.size()); i++) {
      if (Math.abs(seconds.get(i)[column]) > Math.abs(seconds.get(peak)[column])) {
        peak = i;
      }
    }
    return peak;
  }
}
