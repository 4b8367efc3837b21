package handwheel.board;

import java.util.Arrays;
import java.util.List;

/**
 * Figures of a set of runs of one script, each step an item that was earned in full or not. The
 * variances all take n as their denominator; mixed with n - 1, KR-20 comes out too large.
 *
 * <p>Sources: Kuder and Richardson 1937 (Psychometrika 2:151); item-rest correlation as in
 * Henrysson 1963 (Psychometrika 28:211).
 */
public final class ItemFigures {
  private static final String TOO_FEW = "fewer than two runs";

  private final int runs;
  private final int items;
  private final double[][] marks;
  private final double[] totals;

  /**
   * Takes the marks.
   *
   * @param marks a row for each run, a flag for each item; all rows equally long
   */
  public ItemFigures(List<boolean[]> marks) {
    this.runs = marks.size();
    this.items = marks.isEmpty() ? 0 : marks.get(0).length;
    this.marks = new double[runs][items];
    this.totals = new double[runs];
    for (int r = 0; r < runs; r++) {
      for (int i = 0; i < items; i++) {
        this.marks[r][i] = marks.get(r)[i] ? 1 : 0;
        totals[r] += this.marks[r][i];
      }
    }
  }

  /**
   * Returns how often an item was earned, with its interval.
   *
   * @param item index of the item
   * @return the share; only for one run or more
   */
  public Interval difficulty(int item) {
    return Interval.wilson((int) Math.round(sum(column(item))), runs);
  }

  /**
   * Returns the correlation of an item with the rest of the score, itself left out.
   *
   * @param item index of the item
   * @return -1 to 1; below 0 the item and its key want looking at
   */
  public Figure discrimination(int item) {
    double[] column = column(item);
    double[] rest = new double[runs];
    for (int r = 0; r < runs; r++) {
      rest[r] = totals[r] - column[r];
    }
    return correlation(column, rest);
  }

  /**
   * Returns the correlation of an item with the whole score, itself counted in, which flatters it.
   *
   * @param item index of the item
   * @return -1 to 1
   */
  Figure itemTotal(int item) {
    return correlation(column(item), totals);
  }

  /**
   * Returns the reliability KR-20.
   *
   * @return at most 1; may be below 0
   */
  public Figure kr20() {
    double sumPq = 0;
    for (int i = 0; i < items; i++) {
      double p = sum(column(i)) / Math.max(1, runs);
      sumPq += p * (1 - p);
    }
    return reliability(sumPq);
  }

  /** KR-21 takes all items as equally hard; only for comparison with published figures. */
  Figure kr21() {
    double mean = sum(totals) / Math.max(1, runs);
    return reliability(items == 0 ? 0 : mean * (items - mean) / items);
  }

  private Figure reliability(double itemVariance) {
    if (runs < 2) {
      return Figure.undefined(TOO_FEW);
    }
    if (items < 2) {
      return Figure.undefined("fewer than two steps");
    }
    double variance = variance();
    return variance == 0
        ? Figure.undefined("all runs scored alike")
        : Figure.of(items / (items - 1.0) * (1 - itemVariance / variance));
  }

  /**
   * Returns the standard error of measurement, in items.
   *
   * @return the score's standard deviation times the root of what KR-20 leaves
   */
  public Figure standardError() {
    Figure kr20 = kr20();
    if (kr20.value().isEmpty()) {
      return kr20;
    }
    double left = Math.max(0, 1 - kr20.value().getAsDouble());
    return Figure.of(StrictMath.sqrt(variance() * left));
  }

  /** Returns the variance of the whole scores, with n as denominator. */
  double variance() {
    double mean = sum(totals) / Math.max(1, runs);
    return Arrays.stream(totals).map(t -> (t - mean) * (t - mean)).sum() / Math.max(1, runs);
  }

  private double[] column(int item) {
    double[] column = new double[runs];
    for (int r = 0; r < runs; r++) {
      column[r] = marks[r][item];
    }
    return column;
  }

  private static Figure correlation(double[] x, double[] y) {
    if (x.length < 2) {
      return Figure.undefined(TOO_FEW);
    }
    double meanX = sum(x) / x.length;
    double meanY = sum(y) / y.length;
    double xy = 0;
    double xx = 0;
    double yy = 0;
    for (int i = 0; i < x.length; i++) {
      xy += (x[i] - meanX) * (y[i] - meanY);
      xx += (x[i] - meanX) * (x[i] - meanX);
      yy += (y[i] - meanY) * (y[i] - meanY);
    }
    if (xx == 0) {
      return Figure.undefined("every run has the same mark here");
    }
    return yy == 0
        ? Figure.undefined("all runs are alike in the rest")
        : Figure.of(xy / StrictMath.sqrt(xx * yy));
  }

  private static double sum(double[] values) {
    double sum = 0;
    for (double v : values) {
      sum += v;
    }
    return sum;
  }
}
