package handwheel.plant.outside;

import handwheel.plant.DrumBench;
import handwheel.plant.DrumInputs;
import handwheel.plant.PlantNumbers;
import handwheel.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The plant's own drum, taken out of the plant and given the sizes of published models: the unit of
 * 160 MW in three steps, the start-up of a drum of 100 m3, a small boiler's rise of pressure.
 */
final class DrumCheck {
  static final String STEPS = "drum in the published unit";
  static final String START_UP = "drum in the published start-up";
  static final String SMALL = "pressure rise of a small boiler";

  /** Total, riser, downcomer, glass volume m3, water area m2, steel of 500 J/kgK, downcomer m2. */
  private static final SortedMap<String, Double> PUBLISHED =
      new TreeMap<>(
          Map.of(
              "drum.total-volume", 88.0,
              "drum.riser-volume", 37.0,
              "drum.downcomer-volume", 11.0,
              "drum.glass-volume", 24.1,
              "drum.water-area", 20.0,
              "drum.steel", 300_000 * 550 / 500.0,
              "drum.downcomer-area", 0.3812));

  private DrumCheck() {}

  static List<Figure> figures(SortedMap<String, Double> factors) {
    List<Figure> figures = new ArrayList<>();
    for (String step : List.of("heat", "steam", "feed")) {
      step(publishedSizes(factors), step, figures);
    }
    startUp(factors, figures);
    small(factors, 600, 0.355, figures);
    small(factors, 150, 0.131, figures);
    return figures;
  }

  /** Sizes of the published unit, with factors. */
  static PlantNumbers publishedSizes(SortedMap<String, Double> factors) {
    return Altered.sizes(PUBLISHED, factors);
  }

  /** The published unit's drum as the plant has it, at rest. */
  static DrumBench published(PlantNumbers numbers) {
    DrumBench drum = new DrumBench(numbers);
    drum.fill(PublishedUnit.TEMPERATURE_K, PublishedUnit.WATER_M3, 5, 1);
    for (int i = 0; i < 20 * 60; i++) {
      drum.step(PublishedUnit.REST);
    }
    return drum;
  }

  /** Pressure and water against the four-state model, whose balances are the same. */
  private static void step(PlantNumbers numbers, String step, List<Figure> figures) {
    AstromBell model = PublishedUnit.atRest();
    DrumBench drum = published(numbers);
    double modelPa = model.pressurePa();
    double drumPa = drum.pressurePa();
    DrumInputs inputs = PublishedUnit.step(step);
    for (int i = 1; i <= 20 * 200; i++) {
      model.step(inputs);
      drum.step(inputs);
      if (i == 20 * 10 || i == 20 * 100 || i == 20 * 200) {
        String what = "+10 of " + step + ", " + i / 20 + " s, ";
        double found = (drum.pressurePa() - drumPa) / 1000;
        double outside = (model.pressurePa() - modelPa) / 1000;
        figures.add(Figure.relative(STEPS, what + "kPa", found, outside, 0.005));
        figures.add(new Figure(STEPS, what + "water m3", drum.waterM3(), model.waterM3(), 0.01));
      }
    }
  }

  private static void startUp(SortedMap<String, Double> factors, List<Figure> figures) {
    SortedMap<String, Double> sizes = new TreeMap<>();
    sizes.put("drum.total-volume", EquilibriumDrum.VOLUME_M3);
    sizes.put("drum.steel", EquilibriumDrum.STEEL_KG);
    EquilibriumDrum model = new EquilibriumDrum();
    DrumBench drum = new DrumBench(Altered.sizes(sizes, factors));
    drum.fill(model.temperatureK(), EquilibriumDrum.WATER_M3, 1, 0);
    List<Integer> shown = List.of(900, 1800, 3600, 5400);
    for (int i = 1; i <= 5400 * 20; i++) {
      drum.step(model.inputs());
      model.step(0.05);
      if (i % 20 == 0 && shown.contains(i / 20)) {
        String what = i / 20 + " s, ";
        double found = drum.pressurePa() / 1e5;
        figures.add(
            Figure.relative(START_UP, what + "bar", found, model.pressurePa() / 1e5, 0.002));
        figures.add(
            Figure.relative(START_UP, what + "water m3", drum.waterM3(), model.waterM3(), 0.002));
      }
    }
  }

  /**
   * 4.5 m3 of water, 3.5 of steam, 20 t of steel: psi/s for each MW; computed from the balances.
   */
  private static void small(
      SortedMap<String, Double> factors, double psig, double psiPerS, List<Figure> figures) {
    SortedMap<String, Double> sizes = new TreeMap<>();
    sizes.put("drum.total-volume", 8.0);
    sizes.put("drum.steel", 20_000.0);
    DrumBench drum = new DrumBench(Altered.sizes(sizes, factors));
    drum.fill(SteamCheck.boilingK(Unit.PSIG.toSi(psig) + 101_325), 4.5, 0.5, 0.1);
    drum.evaluate(new DrumInputs(1e6, 0, 0, 0));
    figures.add(
        Figure.relative(
            SMALL,
            (int) psig + " psig, psi/s for each MW",
            Unit.PSIG.fromSi(drum.pressurePaPerS()),
            psiPerS,
            0.01));
  }
}
