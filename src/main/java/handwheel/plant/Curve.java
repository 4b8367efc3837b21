package handwheel.plant;

/** Small shapes the equations are made of. All are exact in IEEE arithmetic: no library calls. */
final class Curve {
  private Curve() {}

  static double clip(double x, double low, double high) {
    return x < low ? low : x > high ? high : x;
  }

  /** Rises smoothly from 0 at 0 to 1 at 1: x2 (3 - 2x). */
  static double smoothStep(double x) {
    double c = clip(x, 0, 1);
    return c * c * (3 - 2 * c);
  }

  /** Square root with the sign of x and a finite slope at zero. */
  static double signedRoot(double x, double soft) {
    return x / Math.sqrt(Math.sqrt(x * x + soft * soft));
  }

  /**
   * Fifth root by three steps of Halley's rule from a guess in the exponent; 0 for x at or below 0.
   * Relative error below 1e-15.
   */
  static double fifthRoot(double x) {
    if (x <= 0) {
      return 0;
    }
    double y = Double.longBitsToDouble(Double.doubleToRawLongBits(x) / 5 + 0x3325_D000_0000_0000L);
    for (int i = 0; i < 3; i++) {
      double y5 = y * y * y * y * y;
      y = y * (2 * y5 + 3 * x) / (3 * y5 + 2 * x);
    }
    return y;
  }
}
