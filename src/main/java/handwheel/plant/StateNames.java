package handwheel.plant;

import handwheel.water.SaturationTable;
import java.util.List;

/**
 * The names a condition of the plant goes by.
 *
 * @param continuous states a condition must name
 * @param all states a condition may name: those, flags and timers
 */
public record StateNames(List<String> continuous, List<String> all) {
  /**
   * Asks a plant for its names.
   *
   * @return names in walking order
   */
  public static StateNames ofPlant() {
    Plant plant = Plant.of(PlantNumbers.usual(), SaturationTable.standard());
    return new StateNames(List.copyOf(plant.continuousStates()), List.copyOf(plant.states()));
  }
}
