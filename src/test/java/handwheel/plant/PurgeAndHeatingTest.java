package handwheel.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import handwheel.units.Measure;
import handwheel.units.Unit;
import org.junit.jupiter.api.Test;

/** What a script grades a purge and a warming up by. */
class PurgeAndHeatingTest {
  /** Furnace of 22 m3 full of air of 100 F holds 25 kg, uptakes half of that again. */
  @Test
  void aPurgeCountsVolumesOfColdAir() {
    Plant plant = Starts.plant("furnace-cold");
    plant.evaluate();
    double kgPerS = plant.value(Quantity.FURNACE_SATURATED_AIR_FLOW);
    Run.ticks(plant, 6000);
    assertThat(plant.value(Quantity.FURNACE_SATURATED_PURGE))
        .isCloseTo(300 * kgPerS / (1.5 * 25), withPercentage(3));
  }

  @Test
  void anOpenRootEndsThePurgeOfItsFurnaceOnly() {
    Plant plant = Starts.plant("furnace-cold");
    plant.set(Port.REGISTER_H1, 1);
    Run.ticks(plant, 200);
    double other = plant.value(Quantity.FURNACE_SUPERHEATER_PURGE);
    plant.set(Port.ROOT_S1, 0.1);
    Run.ticks(plant, 20);
    assertThat(plant.value(Quantity.FURNACE_SATURATED_PURGE)).isZero();
    assertThat(plant.value(Quantity.FURNACE_SUPERHEATER_PURGE)).isGreaterThan(other);
    plant.set(Port.ROOT_S1, 0);
    Run.ticks(plant, 20);
    assertThat(plant.value(Quantity.FURNACE_SATURATED_PURGE)).isGreaterThan(0);
  }

  @Test
  void aFiredFurnaceIsNotPurged() {
    Plant plant = Starts.plant("100");
    Run.ticks(plant, 200);
    assertThat(plant.value(Quantity.FURNACE_SATURATED_PURGE)).isZero();
    assertThat(plant.value(Quantity.FURNACE_SUPERHEATER_PURGE)).isZero();
  }

  /** What the rate says for a minute is what the temperature does in that minute. */
  @Test
  void theRatesAreThoseOfTheTemperatures() {
    Plant plant = Starts.plant("50");
    plant.set(Port.FUEL_TRIP_SUPERHEATER, 0);
    Run.ticks(plant, 1200);
    assertRate(plant, Quantity.DRUM_TEMPERATURE, Quantity.DRUM_HEATING_RATE);
    assertRate(
        plant,
        Quantity.FURNACE_SATURATED_BRICK_TEMPERATURE,
        Quantity.FURNACE_SATURATED_BRICK_HEATING_RATE);
    assertRate(
        plant,
        Quantity.FURNACE_SUPERHEATER_BRICK_TEMPERATURE,
        Quantity.FURNACE_SUPERHEATER_BRICK_HEATING_RATE);
  }

  private static void assertRate(Plant plant, Quantity temperature, Quantity rate) {
    double start = plant.value(temperature);
    double sum = 0;
    for (int i = 0; i < 200; i++) {
      plant.evaluate();
      sum += plant.value(rate) * Plant.TICK_S;
      plant.advance();
    }
    assertThat(sum).isNotZero();
    assertThat(sum).isCloseTo(plant.value(temperature) - start, withPercentage(1));
  }

  /** 100 F/h is 100 x 5/9 K in 3,600 s; NIST SP 811, appendix B.8. */
  @Test
  void aHeatingRateIsReadInDegreesAnHour() {
    assertThat(Unit.FAHRENHEIT_PER_HOUR.toSi(100)).isCloseTo(0.015432, within(1e-6));
    assertThat(Quantity.DRUM_HEATING_RATE.in(Unit.FAHRENHEIT_PER_HOUR, 0.015432))
        .isCloseTo(100, within(0.01));
    var limit = Measure.parse("100 F/h").orElseThrow();
    assertThat(Quantity.DRUM_HEATING_RATE.si(limit).orElseThrow())
        .isCloseTo(0.015432, within(1e-6));
  }
}
