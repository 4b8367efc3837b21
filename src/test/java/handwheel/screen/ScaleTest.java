package handwheel.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Painted scales against the rule of MIL-STD-1472 and MIL-HDBK-759B, from memory: graduations 1, 2
 * or 5 times a power of ten, linear, figures rising to the right.
 */
final class ScaleTest {
  @Test
  void everyGaugeOfTheShipHasGraduationsByTheRule() {
    SteamLeak.FOUND.ship().gauges().forEach(g -> check(Scale.of(g)));
  }

  @Test
  void anyOtherScaleToo() {
    for (double low : new double[] {-30, -7, 0, 60, 100}) {
      for (double span = 0.5; span < 40_000; span *= 1.37) {
        check(new Scale(low, low + span));
      }
    }
  }

  private static void check(Scale scale) {
    for (int cells : new int[] {9, 18, 30}) {
      check(scale, cells);
    }
  }

  private static void check(Scale scale, int cells) {
    double first =
        scale.step(cells)
            / StrictMath.pow(10, Math.floor(StrictMath.log10(scale.step(cells) * 1.0001)));
    assertThat(Math.round(first)).as("%s", scale).isIn(1L, 2L, 5L);
    assertThat(first).isCloseTo(Math.round(first), org.assertj.core.data.Offset.offset(1e-9));
    List<Double> marks = scale.marks(cells);
    assertThat(marks)
        .hasSizeBetween(1, (cells - 1) / 4 + 1)
        .isSorted()
        .allMatch(m -> m >= -1e-9 && m <= 1 + 1e-9);
    for (int i = 2; i < marks.size(); i++) {
      double before = marks.get(i - 1) - marks.get(i - 2);
      assertThat(marks.get(i) - marks.get(i - 1))
          .isCloseTo(before, org.assertj.core.data.Offset.offset(1e-9));
    }
  }
}
