package handwheel.plant;

import handwheel.units.Unit;
import java.util.List;

/**
 * Superheater in the gas of its own furnace.
 *
 * <p>States: tube metal K, outlet steam as the thermometer pocket shows it K, creep damage (1 is
 * failed). Heat from gas to metal and from metal to steam is positive. Outputs: gas temperature
 * behind it, heat to the steam.
 *
 * <p>Assumes one metal temperature, conductances with the 0.6 and 0.8 power of the flows. With no
 * flow the pocket lags or falls while the metal overheats: a real trap, kept. Left out: carried
 * salt, condensation in a cold superheater, spread between tubes.
 *
 * <p>Source: heat exchanger effectiveness; Larson-Miller with C = 20 for 2.25Cr-1Mo tubes (National
 * Metallurgical Laboratory, 2002); conductances engineering estimate.
 */
final class Superheater implements Machine {
  private static final double STEAM_J_PER_KGK = 2700;
  private static final double ALLOY_J_PER_KGK = 560;
  private static final double STRAY_W_PER_K = 40;
  private static final double CREEPS_ABOVE_K = 800;
  private static final double LARSON_MILLER_K = 20_500;
  private static final double ICE_K = 273;

  final State metalK = State.free("superheater.metal.temperature");
  final State outletK = State.free("superheater.outlet.temperature");
  final State damage = State.free("superheater.damage");

  double gasHeatW;
  double steamHeatW;
  double gasBehindK;

  private double gasEffect;
  private double steamEffect;
  private double steamOutK;

  private final double metalJPerK;
  private final double gasScale;
  private final double steamScale;

  Superheater(PlantNumbers numbers) {
    metalJPerK = numbers.get(PlantNumber.SUPERHEATER_METAL) * ALLOY_J_PER_KGK;
    gasScale = numbers.get(PlantNumber.SUPERHEATER_GAS_CONDUCTANCE);
    steamScale = numbers.get(PlantNumber.SUPERHEATER_STEAM_CONDUCTANCE);
  }

  @Override
  public List<State> states() {
    return List.of(metalK, outletK, damage);
  }

  @Override
  public List<ModelRange> ranges() {
    return List.of(
        ModelRange.between(
            "superheater outlet temperature", Unit.FAHRENHEIT, ICE_K, 950, () -> outletK.x),
        ModelRange.below("superheater tube damage", Unit.ONE, 1, () -> damage.x));
  }

  void evaluate(SteamDrum drum, double flowKgPerS, Furnace furnace) {
    double gas = furnace.gasKgPerS * Physics.GAS_J_PER_KGK;
    double steamKgPerS = Math.max(flowKgPerS, 1e-4);
    gasSide(furnace, gas);
    steamSide(drum, steamKgPerS);
    double td = drum.saturationTemperatureK.x;
    metalK.dx = (gasHeatW - steamHeatW - STRAY_W_PER_K * (metalK.x - td)) / metalJPerK;
    metalK.decayPerS =
        (gas * gasEffect + STEAM_J_PER_KGK * steamKgPerS * steamEffect + STRAY_W_PER_K)
            / metalJPerK;
    pocket(td, steamKgPerS);
    damage.dx = metalK.x > CREEPS_ABOVE_K ? Physics.creepPerS(LARSON_MILLER_K, metalK.x) : 0;
  }

  private void gasSide(Furnace furnace, double gas) {
    double root = Curve.fifthRoot(Math.max(furnace.gasKgPerS, 0.05) / 7);
    double conductance = gasScale * root * root * root;
    double capacity = gas + 1e-6;
    gasEffect = 1 - Decay.of(Math.min(conductance / capacity, 30));
    gasHeatW = gas * (furnace.gasK.x - metalK.x) * gasEffect;
    gasBehindK = furnace.gasK.x - gasHeatW / capacity;
  }

  private void steamSide(SteamDrum drum, double steamKgPerS) {
    double root = Curve.fifthRoot(steamKgPerS / 12.1);
    double conductance = steamScale * root * root * root * root + 15;
    double inK =
        drum.saturationTemperatureK.x - drum.carryOver * drum.evaporationJPerKg / STEAM_J_PER_KGK;
    steamEffect = 1 - Decay.of(Math.min(conductance / (STEAM_J_PER_KGK * steamKgPerS), 40));
    steamOutK = inK + (metalK.x - inK) * steamEffect;
    steamHeatW = STEAM_J_PER_KGK * steamKgPerS * (steamOutK - inK);
  }

  private void pocket(double td, double steamKgPerS) {
    double lagS = 3 + 4 / (0.1 + steamKgPerS);
    double target = steamKgPerS > 0.02 ? Math.max(steamOutK, td) : td + 0.6 * (metalK.x - td);
    outletK.dx = (target - outletK.x) / lagS;
    outletK.decayPerS = 1 / lagS;
  }
}
