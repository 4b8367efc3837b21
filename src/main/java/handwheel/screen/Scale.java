package handwheel.screen;

import handwheel.ship.Gauge;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * What is painted on a gauge: a linear scale whose graduations are 1, 2 or 5 times a power of ten,
 * rising to the right. Informed by MIL-HDBK-759B and MIL-STD-1472, from memory.
 *
 * @param low lower end, in the gauge's unit
 * @param high upper end, above {@code low}
 */
record Scale(double low, double high) {
  /** Graduations that stand closer than this many cells run together. */
  private static final int CELLS_A_MARK = 4;

  static Scale of(Gauge gauge) {
    return new Scale(gauge.low(), gauge.high());
  }

  /** Returns the least step of the series that leaves few enough graduations on so many cells. */
  double step(int cells) {
    int most = Math.max(1, (cells - 1) / CELLS_A_MARK);
    for (double ten = 0.001; ; ten *= 10) {
      for (int factor : new int[] {1, 2, 5}) {
        if (marks(ten * factor) <= most + 1) {
          return ten * factor;
        }
      }
    }
  }

  private long marks(double step) {
    return last(step) - first(step) + 1;
  }

  private long first(double step) {
    return (long) Math.ceil(low / step - 1e-9);
  }

  private long last(double step) {
    return (long) Math.floor(high / step + 1e-9);
  }

  /** Returns where the graduations stand, each a share of the scale from 0 to 1. */
  List<Double> marks(int cells) {
    List<Double> marks = new ArrayList<>();
    double step = step(cells);
    for (long i = first(step); i <= last(step); i++) {
      marks.add((i * step - low) / (high - low));
    }
    return marks;
  }

  /** Returns the ends in figures, such as {@code 0..800}. */
  String ends() {
    return plain(low) + ".." + plain(high);
  }

  /** Returns the upper or the lower end in figures. */
  String end(boolean isUpper) {
    return plain(isUpper ? high : low);
  }

  double span() {
    return high - low;
  }

  private static String plain(double figure) {
    return BigDecimal.valueOf(figure).stripTrailingZeros().toPlainString();
  }
}
