package handwheel.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import handwheel.units.Unit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** With every valve left alone the plant stays where its design point is, five minutes long. */
class SteadyStateTest {
  @ParameterizedTest
  @ValueSource(strings = {"25", "50", "100"})
  void nothingDrifts(String load) {
    Plant plant = Starts.plant(load);
    plant.evaluate();
    double pa = plant.value(Quantity.DRUM_PRESSURE);
    double level = plant.value(Quantity.DRUM_LEVEL);
    double outlet = plant.value(Quantity.SUPERHEATER_OUTLET_TEMPERATURE);
    Run.ticks(plant, 6000);
    assertThat(plant.value(Quantity.DRUM_PRESSURE)).isCloseTo(pa, within(1e-3 * Plant.PSI));
    assertThat(plant.value(Quantity.DRUM_LEVEL)).isCloseTo(level, within(1e-5 * 0.0254));
    assertThat(plant.value(Quantity.SUPERHEATER_OUTLET_TEMPERATURE))
        .isCloseTo(outlet, within(1e-4));
  }

  /** The design figures of a 600 psig, 850 F plant making 109,000 lb/h. */
  @ParameterizedTest
  @ValueSource(strings = {"25", "50", "100"})
  void everyLoadIsHeldAtRatedSteam(String load) {
    Plant plant = Starts.plant(load);
    plant.evaluate();
    assertThat(plant.value(Quantity.DRUM_PRESSURE))
        .isCloseTo(Physics.RATED_PA, within(0.01 * Plant.PSI));
    assertThat(plant.value(Quantity.SUPERHEATER_OUTLET_TEMPERATURE))
        .isCloseTo(Unit.FAHRENHEIT.toSi(850), within(0.01));
  }
}
