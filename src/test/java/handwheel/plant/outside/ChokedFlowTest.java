package handwheel.plant.outside;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import handwheel.units.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The formulas the leaks are held to, against worked examples and each other. */
class ChokedFlowTest {
  /** API 520 part 1, seventh edition, example 4: 69,615 kg/h saturated at 12,236 kPa, read. */
  @Test
  void theWorkedExampleComesOut() {
    // The printed 1103.5 has a superheat factor a little below 1; by hand it is 1.705 in2.
    double area = ChokedFlow.apiAreaMm2(69_615, 12_236, 0.975, 1);
    assertThat(area).isCloseTo(1103.5, withPercentage(0.5));
    assertThat(area / 645.16).isCloseTo(1.705, withPercentage(0.2));
    assertThat(ChokedFlow.napierCorrection(10.5e6)).isCloseTo(0.99691, within(5e-6));
  }

  /** The two forms of the API equation are one. */
  @Test
  void theFormsInPoundsAndKilogramsAgree() {
    double flux = ChokedFlow.api(4.238e6, 1);
    double area = ChokedFlow.apiAreaMm2(flux * 3600 * 1e-3, 4238, 1, 1);
    assertThat(area).isCloseTo(1000, withPercentage(0.1));
  }

  /** Flow for each area kg/m2s, computed once from IAPWS-IF97 by an independent program. */
  @ParameterizedTest
  @CsvSource({
    "600, 5993.9",
    "615, 6140.7",
    "150, 1634.6",
    "100, 1148.8",
  })
  void saturatedSteamChokesAsComputed(double psig, double flux) {
    double pa = Unit.PSIG.toSi(psig) + 101_325;
    assertThat(ChokedFlow.equilibriumSaturated(pa)).isCloseTo(flux, withPercentage(0.1));
    assertThat(ChokedFlow.api(pa, 1)).isCloseTo(flux, withPercentage(3.5));
    assertThat(ChokedFlow.napier(pa)).isCloseTo(flux, withPercentage(3.5));
  }

  @ParameterizedTest
  @CsvSource({"700, 5362.6", "850, 4967.5"})
  void superheatedSteamChokesAsComputed(double fahrenheit, double flux) {
    double pa = Unit.PSIG.toSi(600) + 101_325;
    double kelvin = Unit.FAHRENHEIT.toSi(fahrenheit);
    assertThat(ChokedFlow.equilibriumSuperheated(pa, kelvin)).isCloseTo(flux, withPercentage(0.1));
    assertThat(ChokedFlow.api(pa, ChokedFlow.superheatFactor(fahrenheit)))
        .isCloseTo(flux, withPercentage(3.5));
  }
}
