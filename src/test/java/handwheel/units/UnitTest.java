package handwheel.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Conversions against NIST SP 811 (2008), appendix B.8; temperatures against its section B.8. */
class UnitTest {
  @ParameterizedTest
  @CsvSource({
    "psia, 1, 6894.757",
    "psig, 1, 6894.757",
    "inWG, 1, 249.089",
    "F, 32, 273.15",
    "F, 212, 373.15",
    "C, 100, 373.15",
    "in, 1, 0.0254",
    "ft, 1, 0.3048",
    "lb, 1, 0.45359237",
    "lb/h, 1, 1.2599789e-4",
    "gpm, 1, 6.30901964e-5",
    "min, 1, 60",
    "h, 1, 3600"
  })
  void isWorthThePublishedFigure(String symbol, double figure, double si) {
    Unit unit = Unit.ofSymbol(symbol).orElseThrow();
    assertThat(unit.toSi(figure)).isCloseTo(si, within(1e-7 * si));
    assertThat(unit.fromSi(unit.toSi(figure))).isCloseTo(figure, within(1e-9));
  }

  @Test
  void aMeasureIsReadAndPrinted() {
    assertThat(Measure.parse("600 psig")).contains(new Measure(600, Unit.PSIG));
    assertThat(Measure.parse("60%")).contains(new Measure(60, Unit.PERCENT));
    assertThat(Measure.parse("600")).isEmpty();
    assertThat(Measure.parse("600 psi")).isEmpty();
    assertThat(new Measure(-0.04, Unit.INCH).text()).isEqualTo("0.0 in");
    assertThat(new Measure(Double.NaN, Unit.INCH).figureText()).isEqualTo("?");
  }
}
