package handwheel.plant.outside;

import handwheel.plant.PlantNumbers;
import java.util.ArrayList;
import java.util.List;

/**
 * The ship's drum beside the four-state model with the ship's sizes. Pressure has to be the same,
 * since the balances are. The level has to have the same sign and the same time; its size is what
 * the plant's two residence times make of the model's fourth state, and is held to the seven tenths
 * that is claimed wherever the plant is described.
 */
final class ShipDrumCheck {
  static final String PRESSURE = "ship's drum, pressure of load steps";
  static final String LEVEL = "ship's drum, swell and shrink";

  private ShipDrumCheck() {}

  static List<Figure> figures(PlantNumbers numbers) {
    List<Figure> figures = new ArrayList<>();
    add(ShipDrumRun.throttle(numbers, "50", 1, 120), "50 to 100 %, ", figures);
    add(ShipDrumRun.throttle(numbers, "100", 0.75, 30), "100 to 75 %, ", figures);
    return figures;
  }

  private static void add(ShipDrumRun run, String what, List<Figure> figures) {
    for (int s = 10; s < run.seconds.size(); s += s < 30 ? 10 : 30) {
      double[] row = run.seconds.get(s);
      figures.add(new Figure(PRESSURE, what + s + " s, psig", row[0], row[1], 0.5));
    }
    int plant = run.peakS(2);
    int model = run.peakS(3);
    double ratio = run.seconds.get(plant)[2] / run.seconds.get(model)[3];
    figures.add(new Figure(LEVEL, what + "peak at s", plant, model, 2));
    figures.add(new Figure(LEVEL, what + "peak over the model's", ratio, 0.7, 0.03));
  }
}
