package handwheel.plant;

/**
 * Gas from both furnaces through the generating bank and the economizer, and the sum of all heat
 * into the boiler's water. No state.
 *
 * <p>Outputs: heat into tubes and economizer, gas temperature behind it, casing loss.
 *
 * <p>Assumes the bank's effectiveness falls with gas flow to the power 0.35. Left out: soot on the
 * tubes, dew point, the gas's own storage.
 *
 * <p>Source: heat exchanger effectiveness; figures engineering estimate.
 */
final class GasPath {
  private static final double CASING_W_PER_K = 437.5;

  double evaporationW;
  double economizerW;
  double casingW;
  double stackK;

  void evaluate(
      SteamDrum drum,
      Furnace saturated,
      Furnace superheater,
      double behindSuperheaterK,
      FeedSystem feed) {
    double td = drum.saturationTemperatureK.x;
    double gas = saturated.gasKgPerS + superheater.gasKgPerS;
    double inK =
        (saturated.gasKgPerS * saturated.gasK.x + superheater.gasKgPerS * behindSuperheaterK)
            / (gas + 1e-9);
    double z = Curve.fifthRoot(Math.sqrt(Math.sqrt(Math.max(gas, 0.05) / 17.5)));
    double z2 = z * z;
    double effect = 1 / (z2 * z2 * z2 * z); // gas share to the power -0.35
    double behindBankK = td + (inK - td) * Decay.of(Math.min(2.4 * effect, 20));
    double bankW = Physics.GAS_J_PER_KGK * gas * (inK - behindBankK);
    double q = feed.flowKgPerS;
    stackK =
        behindBankK
            - (behindBankK - feed.temperatureK) * (1 - Decay.of(1.1 * effect)) * q / (q + 0.6);
    economizerW = Physics.GAS_J_PER_KGK * gas * (behindBankK - stackK);
    double radiantW = saturated.tubeHeatW + superheater.tubeHeatW;
    evaporationW = (radiantW + bankW) * (1 - 0.85 * drum.dryFraction) - casingW / 2;
  }

  /** First part: what the casing loses to the upper level. */
  void casing(double releasedW, double drumK, double upperK) {
    casingW = 0.004 * releasedW + CASING_W_PER_K * (drumK - upperK);
  }
}
