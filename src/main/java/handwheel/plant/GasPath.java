package handwheel.plant;

/**
 * Gas from both furnaces through the generating bank and the economizer, and the sum of all heat
 * into the boiler's water. No state.
 *
 * <p>Outputs: heat into tubes and economizer, gas temperature behind it, casing loss. Faults: brick
 * fallen from the casing, water from a holed economizer, a fire in the uptake.
 *
 * <p>Assumes the bank's effectiveness falls with gas flow to the power 0.35. Left out: soot on the
 * tubes, dew point, the gas's own storage.
 *
 * <p>Source: heat exchanger effectiveness; figures engineering estimate.
 */
final class GasPath {
  private static final double CASING_W_PER_K = 437.5;
  private static final double EVAPORATION_J_PER_KG = 2.4e6;
  private static final double MOST_RISE_K = 900;

  /** Plate at 800 K to a room at 310 K: 18 kW/m2 radiated with 0.8, 5 carried off by the air. */
  private static final double DULL_RED_W_PER_M2 = 23_000;

  double evaporationW;
  double economizerW;
  double casingW;
  double stackK;

  private final Positions ports;
  private final double saturatedBrickM2;
  private final double superheaterBrickM2;

  private final Furnace saturated;
  private final Furnace superheater;
  private final UptakeFire uptake;

  GasPath(PlantNumbers numbers, Positions ports, Furnace saturated, Furnace superheater) {
    this.ports = ports;
    this.saturated = saturated;
    this.superheater = superheater;
    uptake = new UptakeFire(ports);
    saturatedBrickM2 = numbers.get(PlantNumber.FURNACE_SATURATED_BRICK_AREA);
    superheaterBrickM2 = numbers.get(PlantNumber.FURNACE_SUPERHEATER_BRICK_AREA);
  }

  void evaluate(SteamDrum drum, double behindSuperheaterK, FeedSystem feed) {
    uptake.evaluate(saturated, superheater);
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
    stackK += change(uptake.heatW - EVAPORATION_J_PER_KG * feed.economizerLeakKgPerS, gas);
    double radiantW = saturated.tubeHeatW + superheater.tubeHeatW;
    evaporationW = (radiantW + bankW) * (1 - 0.85 * drum.dryFraction) - casingW / 2;
  }

  /** Soot burning in the uptake, kg/s. */
  double sootKgPerS() {
    return uptake.burnsKgPerS;
  }

  /** Change of the stack's temperature by heat set free or taken up behind the economizer, K. */
  private double change(double heatW, double gasKgPerS) {
    double freely = heatW / (Physics.GAS_J_PER_KGK * Math.max(gasKgPerS, 0.3));
    return Curve.clip(freely, Math.min(373 - stackK, 0), MOST_RISE_K);
  }

  /** First part: what the casing loses to the upper level. */
  void casing(double drumK, double upperK) {
    double releasedW = saturated.releasedW + superheater.releasedW;
    double bareW =
        bare(ports.at(Port.BRICK_FALLEN_SATURATED) * saturatedBrickM2, saturated.brickFaceK.x)
            + bare(
                ports.at(Port.BRICK_FALLEN_SUPERHEATER) * superheaterBrickM2,
                superheater.brickFaceK.x);
    casingW = 0.004 * releasedW + CASING_W_PER_K * (drumK - upperK) + bareW;
  }

  /** Heat through casing whose brick has fallen: it glows dull red behind a hot furnace. */
  private static double bare(double areaM2, double furnaceK) {
    return areaM2 * DULL_RED_W_PER_M2 * Curve.clip((furnaceK - 400) / 800, 0, 1);
  }
}
