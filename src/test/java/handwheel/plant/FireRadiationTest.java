package handwheel.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Radiation of an oil fire and its dose. */
class FireRadiationTest {
  /**
   * Inputs of the worked sheet of NUREG-1805, chapter 5: a lubricating oil pool of 9 ft2, 771.52
   * kW, target 10 ft from its edge, 0.30 radiated; the point source law worked out by hand.
   */
  @Test
  void aPoolOfNineSquareFeetWarmsAsInTheSheet() {
    double edgeM = StrictMath.sqrt(0.84 / StrictMath.PI);
    assertThat(FireRadiation.wPerM2(771.52e3, 3.048 + edgeM)).isCloseTo(1450, within(5.0));
  }

  /** SFPE Handbook 5th edition, 63.43 with 1.33, in seconds. */
  @ParameterizedTest
  @CsvSource({"2.5, 23.6", "5, 9.4", "10, 3.73", "20, 1.48"})
  void painComesAsPublished(double kwPerM2, double seconds) {
    assertThat(1 / FireRadiation.dosePerS(kwPerM2 * 1000)).isCloseTo(seconds, withPercentage(0.5));
  }

  /** The handbook's table 63.20 gives 30 s at 2.5 and 4 s at 10 kW/m2; laws spread by a third. */
  @ParameterizedTest
  @CsvSource({"2.5, 30", "10, 4"})
  void theTableAgreesWithinTheSpreadOfTheLaws(double kwPerM2, double seconds) {
    assertThat(1 / FireRadiation.dosePerS(kwPerM2 * 1000)).isCloseTo(seconds, withPercentage(33));
  }

  @Test
  void belowTheThresholdNothingIsCounted() {
    assertThat(FireRadiation.dosePerS(2499)).isZero();
  }

  @Test
  void thePlantWarmsWhoeverIsNearItsFire() {
    Plant plant = Starts.plant("50");
    assertThat(plant.radiantDoseRatePerS(2)).isZero();
    plant.walk((name, value) -> name.equals("fire.heat") ? 1e6 : value);
    assertThat(plant.fireFluxWPerM2(2)).isCloseTo(0.3e6 / (16 * StrictMath.PI), within(1e-6));
    assertThat(plant.radiantDoseRatePerS(2)).isGreaterThan(0.1);
    assertThat(plant.radiantDoseRatePerS(5)).isZero();
    assertThat(plant.fireFluxWPerM2(0)).isEqualTo(plant.fireFluxWPerM2(0.5));
  }
}
