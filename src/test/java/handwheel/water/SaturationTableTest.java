package handwheel.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import com.hummeling.if97.IF97;
import handwheel.units.Unit;
import java.io.StringReader;
import org.junit.jupiter.api.Test;

class SaturationTableTest {
  private static final SaturationTable TABLE = SaturationTable.standard();
  private static final IF97 IF97_SI = new IF97(IF97.UnitSystem.SI);

  /** IAPWS R7-97, table 35: saturation pressure at 300, 500 and 600 K. */
  @Test
  void pressureAgreesWithTheReleasesOwnCheckValues() {
    assertThat(TABLE.pressurePa(300)).isCloseTo(0.00353658941e6, withPercentage(1e-5));
    assertThat(TABLE.pressurePa(500)).isCloseTo(2.63889776e6, withPercentage(1e-5));
    assertThat(TABLE.pressurePa(600)).isCloseTo(12.3443146e6, withPercentage(1e-5));
  }

  /** Between the nodes and on them, against an independent implementation of IAPWS-IF97. */
  @Test
  void everyPropertyAgreesWithIf97BetweenTheNodes() {
    Saturation s = new Saturation();
    for (double t = 281.3; t < 599; t += 0.37) {
      TABLE.at(t, s);
      assertThat(s.pressurePa).isCloseTo(IF97_SI.saturationPressureT(t), withPercentage(4e-5));
      assertThat(s.waterEnthalpyJPerKg)
          .isCloseTo(IF97_SI.specificEnthalpySaturatedLiquidT(t), within(5.0));
      assertThat(s.steamEnthalpyJPerKg)
          .isCloseTo(IF97_SI.specificEnthalpySaturatedVapourT(t), within(5.0));
      assertThat(s.waterDensityKgPerM3)
          .isCloseTo(1 / IF97_SI.specificVolumeSaturatedLiquidT(t), withPercentage(4e-5));
      assertThat(s.steamDensityKgPerM3)
          .isCloseTo(1 / IF97_SI.specificVolumeSaturatedVapourT(t), withPercentage(4e-5));
    }
  }

  /** Saturated steam at 600 psig by IAPWS-IF97: 488.859 F, 474.76 and 1203.63 Btu/lb. */
  @Test
  void theRatedPressureHasItsHandbookFigures() {
    Saturation s = new Saturation();
    TABLE.at(Unit.FAHRENHEIT.toSi(488.859), s);
    assertThat(s.pressurePa).isCloseTo(4.238179e6, within(100.0));
    assertThat(s.waterEnthalpyJPerKg / 2326).isCloseTo(474.76, within(0.01));
    assertThat(s.steamEnthalpyJPerKg / 2326).isCloseTo(1203.63, within(0.01));
    assertThat(s.waterDensityKgPerM3).isCloseTo(793.170, within(0.01));
    assertThat(s.steamDensityKgPerM3).isCloseTo(21.3259, within(0.001));
  }

  /** A slope is the derivative of its own spline, so that what is integrated is conserved. */
  @Test
  void slopesAreThoseOfTheSplinesThemselves() {
    Saturation low = new Saturation();
    Saturation mid = new Saturation();
    Saturation high = new Saturation();
    for (double t = 290.5; t < 600; t += 17.3) {
      TABLE.at(t - 1e-3, low);
      TABLE.at(t, mid);
      TABLE.at(t + 1e-3, high);
      assertThat((high.pressurePa - low.pressurePa) / 2e-3)
          .isCloseTo(mid.pressureSlopePaPerK, withPercentage(1e-3));
      assertThat((high.steamDensityKgPerM3 - low.steamDensityKgPerM3) / 2e-3)
          .isCloseTo(mid.steamDensitySlopeKgPerM3K, withPercentage(1e-3));
      assertThat((high.waterEnthalpyJPerKg - low.waterEnthalpyJPerKg) / 2e-3)
          .isCloseTo(mid.waterEnthalpySlopeJPerKgK, withPercentage(1e-3));
    }
  }

  /** A not-a-knot spline through a cubic is that cubic. */
  @Test
  void aCubicIsReproducedExactly() throws java.io.IOException {
    StringBuilder text = new StringBuilder("T,p,hf,hg,rf,rg\n");
    for (int t = 300; t < 310; t++) {
      double x = t - 300;
      text.append(t).append(',').append(x * x * x - 2 * x).append(",0,0,1,1\n");
    }
    SaturationTable table = SaturationTable.read(new StringReader(text.toString()));
    assertThat(table.pressurePa(300.5)).isCloseTo(0.125 - 1, within(1e-10));
    assertThat(table.pressurePa(308.5)).isCloseTo(614.125 - 17, within(1e-10));
    assertThat(table.pressurePa(311)).isCloseTo(1331 - 22, within(1e-8));
  }

  @Test
  void aTableWithAGapIsRefused() {
    String text = "T,p,hf,hg,rf,rg\n300,1,1,1,1,1\n301,1,1,1,1,1\n303,1,1,1,1,1\n304,1,1,1,1,1\n";
    assertThatThrownBy(() -> SaturationTable.read(new StringReader(text)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("line 4");
  }

  /** The fit's own claim: within 0.8 kJ/kg of IAPWS-IF97, 0.01 to 5 MPa, to 950 K. */
  @Test
  void superheatedSteamAgreesWithIf97() {
    for (double p : new double[] {1e4, 1e5, 1e6, 2e6, 4.238e6, 5e6}) {
      double tSat = IF97_SI.saturationTemperatureP(p);
      for (double t = tSat + 1; t <= 950; t += 7) {
        assertThat(SuperheatedSteam.enthalpyJPerKg(p, t))
            .as("%s Pa %s K", p, t)
            .isCloseTo(IF97_SI.specificEnthalpyPT(p, t), within(850.0));
      }
    }
  }

  /** 600 psig and 850 F: 3338.011 kJ/kg by IAPWS-IF97. */
  @Test
  void theRatedOutletHasItsHandbookEnthalpy() {
    assertThat(SuperheatedSteam.enthalpyJPerKg(4.238179e6, Unit.FAHRENHEIT.toSi(850)))
        .isCloseTo(3.338011e6, within(800.0));
  }
}
