package handwheel.plant.outside;

/**
 * Enthalpy of flue gas from the Shomate equations of the NIST-JANAF tables; coefficients from
 * memory, checked against remembered rows of the tables. No dissociation.
 */
final class FlueGas {
  private static final double[] CO2 = {
    24.99735, 55.18696, -33.69137, 7.948387, -0.136638, -403.6075, -393.5224
  };
  private static final double[] CO2_HOT = {
    58.16639, 2.720074, -0.492289, 0.038844, -6.447293, -425.9186, -393.5224
  };
  private static final double[] STEAM = {
    30.09200, 6.832514, 6.793435, -2.534480, 0.082139, -250.8810, -241.8264
  };
  private static final double[] STEAM_HOT = {
    41.96426, 8.622053, -1.499780, 0.098119, -11.15764, -272.1797, -241.8264
  };
  private static final double[] N2 = {
    19.50583, 19.88705, -8.598535, 1.369784, 0.527601, -4.935202, 0
  };
  private static final double[] N2_HOT = {
    35.51872, 1.128728, -0.196103, 0.014662, -4.553760, -18.97091, 0
  };
  private static final double[] O2 = {
    30.03235, 8.772972, -3.988133, 0.788313, -0.741599, -11.32468, 0
  };
  private static final double[] O2_HOT = {
    20.91111, 10.72071, -2.020498, 0.146449, 9.245722, 5.337651, 0
  };

  private FlueGas() {}

  /** Enthalpy above 298 K, kJ/mol. */
  private static double kJPerMol(double[] c, double kelvin) {
    double t = kelvin / 1000;
    return t * (c[0] + t * (c[1] / 2 + t * (c[2] / 3 + t * c[3] / 4))) - c[4] / t + c[5] - c[6];
  }

  static double carbonDioxide(double kelvin) {
    return kJPerMol(kelvin < 1200 ? CO2 : CO2_HOT, kelvin);
  }

  static double steam(double kelvin) {
    return kJPerMol(kelvin < 1700 ? STEAM : STEAM_HOT, kelvin);
  }

  static double nitrogen(double kelvin) {
    return kJPerMol(kelvin < 2000 ? N2 : N2_HOT, kelvin);
  }

  static double oxygen(double kelvin) {
    return kJPerMol(kelvin < 2000 ? O2 : O2_HOT, kelvin);
  }

  /** Enthalpy above 298 K of the gas of a distillate burned with an air ratio, J for each kg. */
  static double enthalpyJPerKg(double airRatio, double kelvin) {
    double carbon = 0.868 / 0.012011;
    double hydrogen = 0.128 / 2.016e-3;
    double needed = carbon + hydrogen / 2;
    double kJ =
        carbon * carbonDioxide(kelvin)
            + hydrogen * steam(kelvin)
            + needed * (airRatio - 1) * oxygen(kelvin)
            + needed * airRatio * 3.773 * nitrogen(kelvin);
    return 1000 * kJ / (1 + airRatio * Combustion.airForDistillate());
  }

  /** Temperature of a flame that loses nothing, K. */
  static double adiabaticK(double airRatio, double netHeatJPerKg) {
    double heat = netHeatJPerKg / (1 + airRatio * Combustion.airForDistillate());
    double low = 500;
    double high = 3000;
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      if (enthalpyJPerKg(airRatio, middle) < heat) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
