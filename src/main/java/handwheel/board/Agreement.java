package handwheel.board;

import java.util.List;

/**
 * How far assessors agree beyond chance. Sources: Cohen 1960 (Educational and Psychological
 * Measurement 20:37); Fleiss 1971 (Psychological Bulletin 76:378).
 */
public final class Agreement {
  private Agreement() {}

  /**
   * Returns Cohen's kappa of two assessors.
   *
   * @param counts how often the first chose the row and the second the column; square
   * @return at most 1
   */
  public static Figure cohen(int[][] counts) {
    double n = 0;
    double same = 0;
    double[] rows = new double[counts.length];
    double[] columns = new double[counts.length];
    for (int r = 0; r < counts.length; r++) {
      for (int c = 0; c < counts.length; c++) {
        n += counts[r][c];
        same += r == c ? counts[r][c] : 0;
        rows[r] += counts[r][c];
        columns[c] += counts[r][c];
      }
    }
    if (n == 0) {
      return Figure.undefined("nothing was marked by both");
    }
    double byChance = 0;
    for (int i = 0; i < counts.length; i++) {
      byChance += rows[i] / n * (columns[i] / n);
    }
    return kappa(same / n, byChance);
  }

  /**
   * Returns Fleiss' kappa of several assessors.
   *
   * @param counts for each thing marked, how many assessors chose each category; all rows with the
   *     same number of assessors
   * @return at most 1
   */
  public static Figure fleiss(List<int[]> counts) {
    if (counts.isEmpty()) {
      return Figure.undefined("nothing was marked");
    }
    double raters = java.util.Arrays.stream(counts.get(0)).sum();
    if (raters < 2) {
      return Figure.undefined("one assessor");
    }
    double[] shares = new double[counts.get(0).length];
    double agreed = 0;
    for (int[] row : counts) {
      double squares = 0;
      for (int j = 0; j < row.length; j++) {
        shares[j] += row[j] / (raters * counts.size());
        squares += (double) row[j] * row[j];
      }
      agreed += (squares - raters) / (raters * (raters - 1));
    }
    double byChance = 0;
    for (double share : shares) {
      byChance += share * share;
    }
    return kappa(agreed / counts.size(), byChance);
  }

  private static Figure kappa(double observed, double byChance) {
    return byChance >= 1
        ? Figure.undefined("everything was marked alike")
        : Figure.of((observed - byChance) / (1 - byChance));
  }
}
