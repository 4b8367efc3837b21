package handwheel.plant;

/**
 * Heat a fire radiates to somebody near it, and the dose of it; 1 is pain that drives him away.
 *
 * <p>Assumes a point source in the middle of the fire, nothing in between, 0.30 of the heat
 * radiated. Range: beyond about one fire's width; nearer it is too low. Left out: flame shape,
 * shade, smoke that hides the flame, hot decks.
 *
 * <p>Source: point source model and 0.30, NUREG-1805 (US Nuclear Regulatory Commission, 2004),
 * chapter 5; dose time 1.33 / q^1.33 minutes above 2.5 kW/m2, SFPE Handbook, 5th edition, equation
 * 63.43, which ISO 13571 adds to the heat of the air.
 */
final class FireRadiation {
  private static final double RADIATED = 0.30;
  private static final double FELT_KW_PER_M2 = 2.5;
  private static final double NEAREST_M = 0.5;

  private FireRadiation() {}

  /**
   * Returns the heat that falls on a square metre, W/m2.
   *
   * @param heatW heat release of the fire
   * @param distanceM from the middle of the fire; less than 0.5 m counts as 0.5 m
   */
  static double wPerM2(double heatW, double distanceM) {
    double r = Math.max(distanceM, NEAREST_M);
    return RADIATED * heatW / (4 * StrictMath.PI * r * r);
  }

  /**
   * Returns the dose a second.
   *
   * @param wPerM2 heat that falls on the skin
   */
  static double dosePerS(double wPerM2) {
    double kw = wPerM2 / 1000;
    if (kw < FELT_KW_PER_M2) {
      return 0;
    }
    return StrictMath.exp(1.33 * StrictMath.log(kw)) / (60 * 1.33);
  }
}
