package handwheel.debrief;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Figures of the sheet as people read them; 600 psia are 4,136,854 Pa, 930 F are 772.04 K. */
class FiguresTest {
  @ParameterizedTest
  @CsvSource({
    "furnace.any.lit 1, a furnace is lit",
    "burner.s1.lit 0, burner s1 is not lit",
    "leak.break.flow 2.058 kg/s, flow out of the break 2.06 kg/s",
    "drum.pressure 4136854.2 (SI), drum pressure 600.0 psia",
    "superheater.metal.temperature 772.04 (SI), superheater metal temperature 930 F",
    "drum.uncovered 0.25, drum uncovered 0.250",
    "last read 239.269 psig at 3:00, last read 239 psig at 3:00",
    "needs 20.4 s, needs 20.4 s",
    "never read, never read"
  })
  void areRoundedAndNamed(String sheet, String told) {
    assertThat(Figures.text(sheet)).isEqualTo(told);
  }
}
