package handwheel.app;

/** Rank correlations; Spearman's is the product-moment correlation of the ranks, ties averaged. */
final class Ranks {
  private Ranks() {}

  static double spearman(double[] x, double[] y) {
    double[] a = ranks(x);
    double[] b = ranks(y);
    double mean = (x.length + 1) / 2.0;
    double ab = 0;
    double aa = 0;
    double bb = 0;
    for (int i = 0; i < a.length; i++) {
      ab += (a[i] - mean) * (b[i] - mean);
      aa += (a[i] - mean) * (a[i] - mean);
      bb += (b[i] - mean) * (b[i] - mean);
    }
    return ab / Math.sqrt(aa * bb);
  }

  /** Rank correlation after Kendall, corrected for ties (tau-b). */
  static double kendall(double[] x, double[] y) {
    double agree = 0;
    double untiedX = 0;
    double untiedY = 0;
    for (int i = 0; i < x.length; i++) {
      for (int j = i + 1; j < x.length; j++) {
        double dx = Math.signum(x[i] - x[j]);
        double dy = Math.signum(y[i] - y[j]);
        agree += dx * dy;
        untiedX += dx * dx;
        untiedY += dy * dy;
      }
    }
    return agree / Math.sqrt(untiedX * untiedY);
  }

  private static double[] ranks(double[] values) {
    double[] ranks = new double[values.length];
    for (int i = 0; i < values.length; i++) {
      ranks[i] = 0.5;
      for (double other : values) {
        ranks[i] += other < values[i] ? 1 : other > values[i] ? 0 : 0.5;
      }
    }
    return ranks;
  }
}
