package handwheel.plant.outside;

import handwheel.plant.PlantNumber;
import handwheel.plant.PlantNumbers;
import java.util.SortedMap;
import java.util.TreeMap;

/** Sizes of the plant, some of them multiplied by a factor. */
final class Altered {
  private Altered() {}

  /** The ship's sizes with factors. */
  static PlantNumbers ship(SortedMap<String, Double> factors) {
    return sizes(new TreeMap<>(), factors);
  }

  /** Other sizes with the same factors. */
  static PlantNumbers sizes(SortedMap<String, Double> sizes, SortedMap<String, Double> factors) {
    PlantNumbers numbers = PlantNumbers.usual().with(sizes);
    SortedMap<String, Double> changes = new TreeMap<>();
    factors.forEach(
        (id, factor) -> changes.put(id, factor * numbers.get(PlantNumber.ofId(id).orElseThrow())));
    return numbers.with(changes);
  }
}
