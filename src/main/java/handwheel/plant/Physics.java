package handwheel.plant;

/** Constants of nature and of the trade that several machines share. */
final class Physics {
  /** Standard atmosphere, Pa. */
  static final double ATMOSPHERE_PA = 101_325;

  /** Pressure the plant is rated for, 600 psig, Pa absolute. */
  static final double RATED_PA = 600 * Plant.PSI + ATMOSPHERE_PA;

  /** Stefan-Boltzmann constant, W/(m2 K4). */
  static final double RADIATION_W_PER_M2K4 = 5.670374e-8;

  /** Standard gravity as the equations have it, m/s2. */
  static final double GRAVITY_M_PER_S2 = 9.81;

  /** Heat capacity of furnace gas, J/(kg K). */
  static final double GAS_J_PER_KGK = 1230;

  /** Heat capacity of fuel oil, J/(kg K). */
  static final double OIL_J_PER_KGK = 2000;

  /** Air a kilogram of oil needs, kg. */
  static final double AIR_FOR_OIL = 14.3;

  /** Lower heating value of the oil, J/kg. */
  static final double OIL_HEAT_J_PER_KG = 42.7e6;

  private static final double LN_10 = StrictMath.log(10);

  private Physics() {}

  static double fourthPower(double temperatureK) {
    double square = temperatureK * temperatureK;
    return square * square;
  }

  /**
   * Share of the choked flow that passes a hole into the atmosphere; near 1 at high pressure, 0 at
   * one atmosphere. Engineering estimate.
   */
  static double chokeShare(double pressurePa) {
    if (pressurePa <= ATMOSPHERE_PA) {
      return 0;
    }
    double a = ATMOSPHERE_PA / pressurePa;
    return Math.sqrt(Math.max(1 - a * Math.sqrt(a), 0));
  }

  /** Pressure above the atmosphere as a share of the rated one, never negative. */
  static double share(double pressurePa) {
    return Math.max(pressurePa - ATMOSPHERE_PA, 0) / (RATED_PA - ATMOSPHERE_PA);
  }

  /**
   * Creep damage a second by the Larson-Miller parameter with C = 20, for ferritic superheater and
   * boiler steel.
   *
   * @param parameterK Larson-Miller parameter at the tube's stress, K (with hours)
   * @param metalK metal temperature, K
   */
  static double creepPerS(double parameterK, double metalK) {
    return StrictMath.exp(LN_10 * (20 - parameterK / metalK)) / 3600;
  }
}
