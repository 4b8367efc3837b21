package handwheel.plant;

/**
 * Dose of carbon monoxide, carbon dioxide and want of oxygen as published by D. A. Purser (SFPE
 * Handbook), in the form of the Fire Dynamics Simulator's guide; kept for its check points.
 */
final class Asphyxiants {
  static final double CO_PER_MIN = 2.764e-5;
  static final double OXYGEN = 8.13;

  private Asphyxiants() {}

  /** Dose a minute of carbon monoxide at light work. */
  static double monoxidePerMin(double ppm, double coefficient) {
    return coefficient * StrictMath.pow(ppm, 1.036);
  }

  /** How much faster one breathes with carbon dioxide, per cent by volume. */
  static double breathing(double dioxidePercent) {
    return StrictMath.exp(0.1903 * dioxidePercent + 2.0004) / 7.1;
  }

  /** Dose a minute for want of oxygen, per cent by volume, below 20. */
  static double oxygenPerMin(double oxygenPercent, double constant) {
    return 1 / StrictMath.exp(constant - 0.54 * (20.9 - oxygenPercent));
  }
}
