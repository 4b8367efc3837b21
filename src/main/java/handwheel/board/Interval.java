package handwheel.board;

import java.util.Locale;

/**
 * A share with its interval of 95 %, by Wilson's score method without continuity correction (Wilson
 * 1927; Newcombe 1998, Statistics in Medicine 17:857, method 3). It never leaves 0 to 1 and is wide
 * where runs are few, which is why a share is never printed without it.
 *
 * @param successes how many
 * @param of of how many, 1 or more
 * @param low lower end, 0 to 1
 * @param high upper end, 0 to 1
 */
public record Interval(int successes, int of, double low, double high) {
  /** The 97.5 % point of the normal distribution. */
  private static final double Z = 1.959963984540054;

  /**
   * Works the interval out.
   *
   * @param successes how many, 0 to {@code of}
   * @param of of how many, 1 or more
   * @return share and interval
   */
  public static Interval wilson(int successes, int of) {
    if (of < 1 || successes < 0 || successes > of) {
      throw new IllegalArgumentException(successes + " of " + of);
    }
    double n = of;
    double p = successes / n;
    double z2 = Z * Z;
    double middle = (p + z2 / (2 * n)) / (1 + z2 / n);
    double half = Z / (1 + z2 / n) * StrictMath.sqrt(p * (1 - p) / n + z2 / (4 * n * n));
    double low = successes == 0 ? 0 : middle - half;
    double high = successes == of ? 1 : middle + half;
    return new Interval(successes, of, low, high);
  }

  /**
   * Prints share and interval.
   *
   * @return such as {@code 8 of 10 (49 % to 94 %)}
   */
  public String text() {
    return String.format(
        Locale.ROOT, "%d of %d (%.0f %% to %.0f %%)", successes, of, low * 100, high * 100);
  }
}
