package handwheel.water;

/**
 * Cubic spline through nodes one apart whose first two and last two pieces are one polynomial each
 * ("not-a-knot").
 *
 * <p>Source: C. de Boor, A Practical Guide to Splines, chapter IV.
 */
final class NotAKnotSpline {
  private NotAKnotSpline() {}

  /**
   * Writes the coefficients of every piece, powers 0 to 3 of the distance from its left node.
   *
   * @param nodes values, length n, at least 4
   * @param out where to write, four numbers a piece
   * @param from index of the first piece's first coefficient
   * @param stride distance between the first coefficients of neighbouring pieces
   */
  static void fill(double[] nodes, double[] out, int from, int stride) {
    double[] m = curvatures(nodes);
    for (int i = 0; i < nodes.length - 1; i++) {
      int c = from + i * stride;
      out[c] = nodes[i];
      out[c + 1] = nodes[i + 1] - nodes[i] - (2 * m[i] + m[i + 1]) / 6;
      out[c + 2] = m[i] / 2;
      out[c + 3] = (m[i + 1] - m[i]) / 6;
    }
  }

  /** Second derivatives at the nodes: inner ones by elimination, the ends by extrapolation. */
  private static double[] curvatures(double[] y) {
    int n = y.length;
    double[] m = new double[n];
    double[] diagonal = new double[n];
    double[] right = new double[n];
    // Row i: m[i-1] + 4 m[i] + m[i+1] = 6 (second difference); with m[0] = 2 m[1] - m[2] the first
    // inner row becomes 6 m[1] = ..., likewise the last.
    for (int i = 1; i < n - 1; i++) {
      diagonal[i] = 4;
      right[i] = 6 * (y[i + 1] - 2 * y[i] + y[i - 1]);
    }
    m[1] = right[1] / 6;
    m[n - 2] = right[n - 2] / 6;
    right[2] -= m[1];
    right[n - 3] -= m[n - 2];
    for (int i = 3; i <= n - 3; i++) {
      diagonal[i] -= 1 / diagonal[i - 1];
      right[i] -= right[i - 1] / diagonal[i - 1];
    }
    for (int i = n - 3; i >= 2; i--) {
      double beyond = i == n - 3 ? 0 : m[i + 1];
      m[i] = (right[i] - beyond) / diagonal[i];
    }
    m[0] = 2 * m[1] - m[2];
    m[n - 1] = 2 * m[n - 2] - m[n - 3];
    return m;
  }
}
