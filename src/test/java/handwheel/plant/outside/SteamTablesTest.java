package handwheel.plant.outside;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import com.hummeling.if97.IF97;
import handwheel.units.Unit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The library the steam tables are held to against the verification tables of its standard: IAPWS
 * R7-97, tables 5, 7, 15, 24, 35 and 36. The figures were read in three public test programs that
 * quote the release; the speed of sound of region 2 and two boiling points are from memory.
 */
class SteamTablesTest {
  private static final IF97 STEAM = new IF97(IF97.UnitSystem.DEFAULT);

  /** Rounding of the printed tables, per cent. */
  private static final double PRINTED = 1e-6;

  @ParameterizedTest
  @CsvSource({
    "300, 3, 0.100215168e-2, 115.331273, 112.324818, 0.392294792, 4.17301218, 1507.73921",
    "300, 80, 0.971180894e-3, 184.142828, 106.448356, 0.368563852, 4.01008987, 1634.69054",
    "500, 3, 0.120241800e-2, 975.542239, 971.934985, 2.58041912, 4.65580682, 1240.71337",
    "300, 0.0035, 39.4913866, 2549.91145, 2411.69160, 8.52238967, 1.91300162, 427.920172",
    "700, 0.0035, 92.3015898, 3335.68375, 3012.62819, 10.1749996, 2.08141274, 644.289068",
    "700, 30, 0.00542946619, 2631.49474, 2468.61076, 5.17540298, 10.3505092, 480.386523"
  })
  void waterAndSteam(
      double k, double mpa, org.junit.jupiter.params.aggregator.ArgumentsAccessor row) {
    double[] found = {
      STEAM.specificVolumePT(mpa, k),
      STEAM.specificEnthalpyPT(mpa, k),
      STEAM.specificInternalEnergyPT(mpa, k),
      STEAM.specificEntropyPT(mpa, k),
      STEAM.isobaricHeatCapacityPT(mpa, k),
      STEAM.speedOfSoundPT(mpa, k)
    };
    for (int i = 0; i < found.length; i++) {
      assertThat(found[i]).isCloseTo(row.getDouble(i + 2), withPercentage(PRINTED));
    }
  }

  @ParameterizedTest
  @CsvSource({"300, 0.00353658941", "500, 2.63889776", "600, 12.3443146"})
  void saturationPressure(double k, double mpa) {
    assertThat(STEAM.saturationPressureT(k)).isCloseTo(mpa, withPercentage(PRINTED));
  }

  @ParameterizedTest
  @CsvSource({"0.1, 372.755919", "1, 453.035632", "10, 584.149488"})
  void saturationTemperature(double mpa, double k) {
    assertThat(STEAM.saturationTemperatureP(mpa)).isCloseTo(k, withPercentage(PRINTED));
  }

  @ParameterizedTest
  @CsvSource({
    "3, 500, 391.798509", "80, 500, 378.108626", "80, 1500, 611.041229",
    "0.001, 3000, 534.433241", "3, 3000, 575.373370", "3, 4000, 1010.77577",
    "5, 3500, 801.299102", "5, 4000, 1015.31583", "25, 3500, 875.279054",
    "40, 2700, 743.056411", "60, 2700, 791.137067", "60, 3200, 882.756860"
  })
  void temperatureFromEnthalpy(double mpa, double kJ, double k) {
    assertThat(STEAM.temperaturePH(mpa, kJ)).isCloseTo(k, withPercentage(PRINTED));
  }

  /** Boiling points of the tables of 1967, psia and F, from memory: within a tenth of a degree. */
  @ParameterizedTest
  @CsvSource({"100, 327.82", "200, 381.80", "400, 444.60", "600, 486.20", "1000, 544.58"})
  void olderTables(double psia, double fahrenheit) {
    double k = STEAM.saturationTemperatureP(psia * 6894.757e-6);
    assertThat(Unit.FAHRENHEIT.fromSi(k)).isCloseTo(fahrenheit, within(0.1));
  }
}
