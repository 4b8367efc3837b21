package handwheel.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Asphyxiant gases of an oil fire and their dose. */
class FireGasesTest {
  private static final double EIGHTH_INCH_M2 = 7.917e-6;

  /** Verification case of the Fire Dynamics Simulator: 1,000 ppm for 30 minutes is 1.063. */
  @Test
  void halfAnHourOfAThousandPpmIsJustTooMuch() {
    assertThat(30 * AsphyxiantDose.perMinute(1000, 0, 20.9)).isCloseTo(1.063, within(5e-4));
  }

  /** Same guide: 1 per cent of carbon dioxide makes it 1.2594 times; the law worked out beyond. */
  @ParameterizedTest
  @CsvSource({"1, 1.2594", "2, 1.523", "3, 1.843", "5, 2.696", "7, 3.945"})
  void carbonDioxideMakesOneBreatheFaster(double percent, double times) {
    double without = AsphyxiantDose.perMinute(1000, 0, 20.9);
    assertThat(AsphyxiantDose.perMinute(1000, percent, 20.9) / without)
        .isCloseTo(times, withPercentage(0.05));
  }

  /** Purser's law worked out: minutes to incapacitation by carbon monoxide alone. */
  @ParameterizedTest
  @CsvSource({"500, 57.9", "1000, 28.2", "2000, 13.8", "5000, 5.3", "10000, 2.6"})
  void carbonMonoxideTakesItsTime(double ppm, double minutes) {
    assertThat(1 / AsphyxiantDose.perMinute(ppm, 0, 20.9)).isCloseTo(minutes, within(0.06));
  }

  /** ISO 13571's simpler form, 35,000 ppm min, within its own spread of a third. */
  @ParameterizedTest
  @CsvSource({"500", "1000", "3000"})
  void theSimplerFormAgrees(double ppm) {
    assertThat(1 / AsphyxiantDose.perMinute(ppm, 0, 20.9))
        .isCloseTo(35_000 / ppm, withPercentage(33));
  }

  @ParameterizedTest
  @CsvSource({"15, 140", "12, 27.8", "10, 9.4"})
  void lackOfOxygenTakesItsTime(double percent, double minutes) {
    assertThat(1 / AsphyxiantDose.perMinute(0, 0, percent)).isCloseTo(minutes, withPercentage(1));
    assertThat(AsphyxiantDose.perMinute(0, 0, 20.9)).isZero();
  }

  /** Well-ventilated 0.012 kg/kg; far short of air the correlation tends to 11 times that. */
  @Test
  void aFireShortOfAirMakesMoreCarbonMonoxide() {
    assertThat(FireGases.monoxideYield(0)).isEqualTo(0.012);
    assertThat(FireGases.monoxideYield(0.4)).isCloseTo(0.012, within(1e-9));
    assertThat(FireGases.monoxideYield(1))
        .isCloseTo(0.012 * (1 + 10 * StrictMath.exp(-2.5)), within(1e-9));
    assertThat(FireGases.monoxideYield(3)).isBetween(0.11, 0.132);
  }

  @Test
  void cleanAirDoesNothing() {
    Plant plant = Starts.plant("50");
    Run.ticks(plant, 1200);
    assertThat(plant.value(Quantity.SPACE_UPPER_CARBON_MONOXIDE)).isZero();
    assertThat(plant.gasDoseRatePerS(Zone.UPPER)).isZero();
    assertThat(plant.gasDoseRatePerS(Zone.LOWER)).isZero();
    assertThat(plant.value(Quantity.SPACE_LOWER_OXYGEN)).isCloseTo(0.232, within(1e-3));
  }

  /** Carbon monoxide made is what is in the room and what went out; here nothing goes out. */
  @Test
  void carbonMonoxideIsNeitherLostNorMade() {
    Plant plant = burning();
    plant.set(Port.SUPPLY_FAN, 0);
    plant.set(Port.EXHAUST_FAN, 0);
    double made = inside(plant);
    for (int i = 0; i < 200; i++) {
      plant.evaluate();
      made += 0.012 * plant.fire.burnsKgPerS() * Plant.TICK_S;
      plant.advance();
    }
    assertThat(made).isGreaterThan(0.01);
    assertThat(inside(plant)).isCloseTo(made, withPercentage(0.01));
  }

  private static double inside(Plant plant) {
    return 220 * plant.gases.upperMonoxideKgPerM3.x + 240 * plant.gases.lowerMonoxideKgPerM3.x;
  }

  /** In the spray fire of the reference runs heat decides long before the gas. */
  @Test
  void inABigFireHeatDecides() {
    Plant plant = burning();
    Run.ticks(plant, 1200);
    assertThat(plant.value(Quantity.SPACE_UPPER_CARBON_MONOXIDE)).isBetween(1e-4, 1e-3);
    assertThat(plant.value(Quantity.SPACE_UPPER_CARBON_DIOXIDE)).isBetween(0.02, 0.06);
    assertThat(plant.value(Quantity.SPACE_UPPER_GAS_DOSE)).isGreaterThan(1e-3);
    assertThat(plant.value(Quantity.SPACE_UPPER_GAS_DOSE))
        .isLessThan(0.1 * plant.value(Quantity.SPACE_UPPER_DOSE));
    assertThat(plant.value(Quantity.SPACE_LOWER_OXYGEN)).isBetween(0.19, 0.232);
  }

  private static Plant burning() {
    Plant plant = Starts.plant("50");
    plant.set(Port.OIL_SPRAY, EIGHTH_INCH_M2);
    plant.set(Port.IGNITION_SOURCE, 1);
    Run.ticks(plant, 100);
    return plant;
  }
}
