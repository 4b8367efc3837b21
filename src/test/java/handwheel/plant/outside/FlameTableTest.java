package handwheel.plant.outside;

import static org.assertj.core.api.Assertions.assertThat;

import handwheel.plant.Inside;
import handwheel.plant.Plant;
import handwheel.plant.Quantity;
import handwheel.plant.Starts;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/**
 * Flame temperatures at full power, written into the page: what the plant's oil, air and gas would
 * reach without losing heat, what the JANAF enthalpies give, and what the furnace has. The plant's
 * gas has one heat capacity, fitted to the furnace's own temperature, so a flame that loses nothing
 * comes out too hot; nothing in the plant uses it.
 */
class FlameTableTest {
  @Test
  void flamesWithoutLossAndTheFurnacesGas() {
    Plant plant = Starts.plant("100");
    plant.evaluate();
    List<String> lines = new ArrayList<>();
    lines.add("| furnace | air ratio | without loss, plant K | JANAF K | gas in the furnace K |");
    lines.add("|---|---|---|---|---|");
    lines.add(
        line(
            plant,
            Quantity.FURNACE_SATURATED_AIR_RATIO,
            Quantity.FURNACE_SATURATED_GAS_TEMPERATURE));
    lines.add(
        line(
            plant,
            Quantity.FURNACE_SUPERHEATER_AIR_RATIO,
            Quantity.FURNACE_SUPERHEATER_GAS_TEMPERATURE));
    MarkedTable.check("accuracy.md", "flames", lines);
  }

  private static String line(Plant plant, Quantity airRatio, Quantity gas) {
    double ratio = plant.value(airRatio);
    double kelvin = plant.value(gas);
    double gasKg = 1 + ratio * Inside.airForOil(plant);
    double flame = 298 + Inside.heatOfOilJPerKg(plant) / (gasKg * Inside.gasJPerKgK(plant));
    double outside = FlueGas.adiabaticK(ratio, Combustion.netHeat(845, 0.004) * 1e6);
    assertThat(kelvin).isLessThan(outside);
    return String.format(
        Locale.ROOT,
        "| %s | %.2f | %.0f | %.0f | %.0f |",
        airRatio.id().split("\\.", -1)[1],
        ratio,
        flame,
        outside,
        kelvin);
  }
}
