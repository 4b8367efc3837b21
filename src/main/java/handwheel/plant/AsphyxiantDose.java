package handwheel.plant;

/**
 * Dose of asphyxiant gases, 1 incapacitates: carbon monoxide, breathed faster the more carbon
 * dioxide there is, and lack of oxygen.
 *
 * <p>Range: light work, minutes to half an hour. No term for carbon dioxide itself, cyanide or
 * irritants.
 *
 * <p>Source: D. A. Purser's fractional effective dose in the form of the Fire Dynamics Simulator's
 * guide; ISO 13571 has a simpler form of the first (35,000 ppm min).
 */
final class AsphyxiantDose {
  private static final double ENOUGH_OXYGEN_PERCENT = 20;

  private AsphyxiantDose() {}

  /**
   * Returns the dose a minute.
   *
   * @param monoxidePpm carbon monoxide by volume, ppm
   * @param dioxidePercent carbon dioxide by volume, %
   * @param oxygenPercent oxygen by volume, %
   */
  static double perMinute(double monoxidePpm, double dioxidePercent, double oxygenPercent) {
    double monoxide = monoxidePpm > 0 ? monoxide(monoxidePpm) * breathing(dioxidePercent) : 0;
    return monoxide + lackOfOxygen(oxygenPercent);
  }

  /** 2.764e-5 C^1.036 a minute. */
  private static double monoxide(double ppm) {
    return 2.764e-5 * ppm * StrictMath.exp(0.036 * StrictMath.log(ppm));
  }

  /** How much faster one breathes. */
  private static double breathing(double dioxidePercent) {
    return dioxidePercent > 0 ? StrictMath.exp(0.1903 * dioxidePercent + 2.0004) / 7.1 : 1;
  }

  private static double lackOfOxygen(double percent) {
    return percent < ENOUGH_OXYGEN_PERCENT ? StrictMath.exp(0.54 * (20.9 - percent) - 8.13) : 0;
  }
}
