package handwheel.plant.outside;

import com.hummeling.if97.IF97;

/** Published formulas for choked steam through an ideal nozzle, kg/s for each m2. */
final class ChokedFlow {
  private static final double PSI = 6894.757;
  private static final double LB_PER_H_IN2 = 0.45359237 / 3600 / 6.4516e-4;
  private static final IF97 STEAM = new IF97(IF97.UnitSystem.SI);
  private static final double[] SUPERHEAT_F = {300, 400, 500, 600, 700, 800, 900, 1000, 1100, 1200};
  private static final double[] SUPERHEAT_FACTOR = {
    1.00, 1.00, 0.97, 0.92, 0.87, 0.82, 0.79, 0.75, 0.73, 0.70
  };

  private ChokedFlow() {}

  /** Napier's rule for dry saturated steam, W = A P / 70 in lb/s, in2 and psia; from memory. */
  static double napier(double pressurePa) {
    return 3600.0 / 70 * pressurePa / PSI * LB_PER_H_IN2;
  }

  /**
   * Sizing equation of ASME and API 520 without coefficients of a nozzle: 51.5 A P KN KSH in lb/h,
   * in2 and psia. The 51.5, KN and KSH were read.
   */
  static double api(double pressurePa, double superheat) {
    return 51.5 * pressurePa / PSI * napierCorrection(pressurePa) * superheat * LB_PER_H_IN2;
  }

  /** KN of API 520, part 1; 1 up to 10,339 kPa. */
  static double napierCorrection(double pressurePa) {
    double kPa = pressurePa / 1000;
    return kPa <= 10_339 ? 1 : (0.02764 * kPa - 1000) / (0.03324 * kPa - 1061);
  }

  /** KSH of API 520, part 1, seventh edition, table 9, row of 600 psig, linear between. */
  static double superheatFactor(double fahrenheit) {
    int i = 0;
    while (i < SUPERHEAT_F.length - 2 && SUPERHEAT_F[i + 1] < fahrenheit) {
      i++;
    }
    double share = (fahrenheit - SUPERHEAT_F[i]) / (SUPERHEAT_F[i + 1] - SUPERHEAT_F[i]);
    return SUPERHEAT_FACTOR[i] + share * (SUPERHEAT_FACTOR[i + 1] - SUPERHEAT_FACTOR[i]);
  }

  /** Area in mm2 for a flow in kg/h: A = 190.5 W / (P Kd KN KSH), P in kPa; read. */
  static double apiAreaMm2(double kgPerH, double kPa, double kd, double superheat) {
    return 190.5 * kgPerH / (kPa * kd * napierCorrection(1000 * kPa) * superheat);
  }

  /**
   * Isentropic flow of water and steam in equilibrium at its largest, from IAPWS-IF97: the maximum
   * over p of sqrt(2 (h0 - h)) / v.
   */
  static double equilibrium(double pressurePa, double enthalpyJPerKg, double entropyJPerKgK) {
    double low = 0.4 * pressurePa;
    double high = 0.9 * pressurePa;
    for (int i = 0; i < 60; i++) {
      double a = low + (high - low) / 3;
      double b = high - (high - low) / 3;
      if (flux(a, enthalpyJPerKg, entropyJPerKgK) < flux(b, enthalpyJPerKg, entropyJPerKgK)) {
        low = a;
      } else {
        high = b;
      }
    }
    return flux(low, enthalpyJPerKg, entropyJPerKgK);
  }

  private static double flux(double p, double h0, double s0) {
    return Math.sqrt(2 * (h0 - STEAM.specificEnthalpyPS(p, s0))) / STEAM.specificVolumePS(p, s0);
  }

  static double equilibriumSaturated(double pressurePa) {
    return equilibrium(
        pressurePa,
        STEAM.specificEnthalpySaturatedVapourP(pressurePa),
        STEAM.specificEntropySaturatedVapourP(pressurePa));
  }

  static double equilibriumSuperheated(double pressurePa, double kelvin) {
    return equilibrium(
        pressurePa,
        STEAM.specificEnthalpyPT(pressurePa, kelvin),
        STEAM.specificEntropyPT(pressurePa, kelvin));
  }
}
