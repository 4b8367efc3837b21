package handwheel.plant;

import java.util.List;

/**
 * One furnace: gas, brickwork, unburned oil as vapour and on the floor.
 *
 * <p>States: gas K, brick face K, brick core K, vapour kg, oil on the floor kg, share of unused air
 * in the gas, brick damage, air changes of a purge; timers: vapour burning as it forms, ignition of
 * a cloud. Heat from the gas is positive. Outputs: gas flow, heat to the water-cooled walls, heat
 * released.
 *
 * <p>The purge is counted in volumes of cold furnace air, uptakes included as half a furnace more,
 * since the last oil root was shut. It is what a clock stands for; no rule acts on it.
 *
 * <p>Assumes a well-stirred furnace, radiation with one emissivity, brick in two lumps. Explosion
 * pressures come from a cloud of a tenth of the furnace and serve only to tell the classes apart.
 * Left out: turbulence, flame position, pressure waves.
 *
 * <p>Source: Stefan-Boltzmann; the rest engineering estimate.
 */
final class Furnace implements Machine {
  private static final double GAS_J_PER_K = 15_000;
  private static final double REFERENCE_K = 298;
  private static final double AIR_W_S_PER_KG = 12_120;
  private static final double BRICK_CONVECTION_W_PER_K = 450;
  private static final double CASING_CONDUCTANCE_W_PER_K = 65;
  private static final double CASING_K = 320;
  private static final double EVAPORATION_J_PER_KG = 2.6e6;
  private static final double RUPTURE_STEAM = 0.6;
  private static final double RUPTURE_J_PER_KGK = 2000;

  /** Furnace and uptakes full of air of 100 F, kg for each cubic metre of furnace. */
  private static final double PURGE_KG_PER_M3 = 1.5 * 353 / 311;

  /** Brick this hot lights oil, K. */
  static final double LIGHTS_OIL_K = 870;

  private static final int BURNS_TICKS = 400;
  private static final int IGNITION_TICKS = 16;

  final Side side;
  final State gasK;
  final State brickFaceK;
  final State brickCoreK;
  final State vapourKg;
  final State poolKg;
  final State unusedAir;
  final State brickDamage;
  final State purgeChanges;

  double gasKgPerS;
  double releasedW;
  double tubeHeatW;
  double airMassKg;
  double vapourOutKgPerS;

  private final Flag burnsTicks;
  private final Flag ignitionTicks;
  private final FurnaceSize size;

  Furnace(Side side, PlantNumbers numbers) {
    this.side = side;
    size = FurnaceSize.of(side, numbers);
    String name = side == Side.SATURATED ? "furnace.saturated." : "furnace.superheater.";
    gasK = State.free(name + "gas.temperature");
    brickFaceK = State.free(name + "brick.temperature");
    brickCoreK = State.free(name + "brick-core.temperature");
    vapourKg = State.dying(name + "vapour.mass");
    poolKg = State.dying(name + "pool.mass");
    unusedAir = State.atLeast(0, name + "unused-air");
    brickDamage = State.free(name + "brick.damage");
    purgeChanges = State.absent(name + "purge");
    burnsTicks = new Flag(name + "burns-as-formed-ticks");
    ignitionTicks = new Flag(name + "ignition-ticks");
  }

  @Override
  public List<State> states() {
    return List.of(
        gasK, brickFaceK, brickCoreK, vapourKg, poolKg, unusedAir, brickDamage, purgeChanges);
  }

  @Override
  public void walkFlags(StateWalker walker) {
    burnsTicks.walk(walker);
    ignitionTicks.walk(walker);
  }

  boolean burnsAsFormed() {
    return burnsTicks.isSet();
  }

  void evaluate(SideFire fire, double airKgPerS, SteamDrum drum, double oilK) {
    double burnedKgPerS = fire.burnedKgPerS + vapour(fire, airKgPerS);
    releasedW = burnedKgPerS * Physics.OIL_HEAT_J_PER_KG;
    double tubeKgPerS = side == Side.SATURATED ? RUPTURE_STEAM * drum.tubeKgPerS : 0;
    double evaporates = Curve.clip((gasK.x - 400) / 300, 0, 1);
    double oilKgPerS = fire.burnedKgPerS + fire.unburnedKgPerS;
    gasKgPerS = airKgPerS + oilKgPerS + tubeKgPerS + fire.waterKgPerS * evaporates;
    double td = drum.saturationTemperatureK.x;
    double in =
        releasedW
            + AIR_W_S_PER_KG * airKgPerS
            + Physics.OIL_J_PER_KGK * oilKgPerS * (oilK - REFERENCE_K)
            + tubeKgPerS * RUPTURE_J_PER_KGK * (td - REFERENCE_K);
    double water = 0.7 * fire.waterKgPerS * EVAPORATION_J_PER_KG * evaporates;
    heat(in - water, td, fire.waterKgPerS);
    purgeChanges.dx = fire.isRootOpen ? 0 : airKgPerS / (PURGE_KG_PER_M3 * size.volumeM3());
  }

  /** A purge starts anew with every root that is opened. */
  void applyPurgeRule(SideFire fire) {
    if (fire.isRootOpen) {
      purgeChanges.x = 0;
    }
  }

  /** Balances vapour, oil on the floor and unused air; returns vapour burned, kg/s. */
  private double vapour(SideFire fire, double airKgPerS) {
    airMassKg = Math.max(size.volumeM3() * 353 / Math.max(gasK.x, 300), 0.5);
    double changesPerS = Math.max(airKgPerS, 0.01) / airMassKg;
    double full = Curve.smoothStep(vapourKg.x / (0.08 * size.volumeM3()));
    boolean isFiring = fire.firing > 0;
    double share = isFiring ? 0.2 : 0.5 + 0.5 * full;
    double evaporates = poolKg.x > 0 ? poolKg.x / poolLifeS(isFiring) * (1 - full) : 0;
    boolean burns = isFiring || burnsAsFormed();
    double burnsKgPerS =
        burns
            ? Math.min(
                vapourKg.x / 0.4,
                0.6 * Math.max(airKgPerS / Physics.AIR_FOR_OIL - fire.burnedKgPerS, 0))
            : 0;
    vapourOutKgPerS = changesPerS * vapourKg.x;
    vapourKg.dx = fire.unburnedKgPerS * (1 - share) + evaporates - vapourOutKgPerS - burnsKgPerS;
    vapourKg.decayPerS = changesPerS + (burns ? 2.5 : 0);
    poolKg.dx = fire.unburnedKgPerS * share - evaporates;
    unusedAir.dx =
        changesPerS * (1 - unusedAir.x)
            - Physics.AIR_FOR_OIL
                * (fire.burnedKgPerS + burnsKgPerS)
                / airMassKg
                * Math.min(unusedAir.x / 0.05, 1);
    unusedAir.decayPerS = changesPerS;
    return burnsKgPerS;
  }

  private double poolLifeS(boolean isFiring) {
    return isFiring ? 15 : 8 + 600 * StrictMath.exp(-(brickFaceK.x - 300) / 90);
  }

  private void heat(double inW, double td, double waterKgPerS) {
    double gas4 = Physics.fourthPower(gasK.x);
    double drum4 = Physics.fourthPower(td);
    double face4 = Physics.fourthPower(brickFaceK.x);
    double wallsW = Physics.RADIATION_W_PER_M2K4 * size.wallM2() * (gas4 - drum4);
    double brickRadiation = Physics.RADIATION_W_PER_M2K4 * size.brickM2();
    double toBrickW = brickRadiation * (gas4 - face4);
    double brickToTubesW = 0.8 * brickRadiation * (face4 - drum4);
    double convectionW = BRICK_CONVECTION_W_PER_K * (gasK.x - brickFaceK.x);
    double flow = Physics.GAS_J_PER_KGK * gasKgPerS;
    gasK.dx = (inW - flow * (gasK.x - REFERENCE_K) - wallsW - toBrickW - convectionW) / GAS_J_PER_K;
    double gasCubed = gasK.x * gasK.x * gasK.x;
    gasK.decayPerS =
        (flow
                + 4 * Physics.RADIATION_W_PER_M2K4 * (size.wallM2() + size.brickM2()) * gasCubed
                + BRICK_CONVECTION_W_PER_K)
            / GAS_J_PER_K;
    tubeHeatW = wallsW + brickToTubesW;
    brick(toBrickW + convectionW - brickToTubesW, waterKgPerS);
  }

  private void brick(double inW, double waterKgPerS) {
    double face = brickFaceK.x;
    double inwardW = size.conductanceWPerK() * (face - brickCoreK.x);
    double quenchW =
        0.3 * waterKgPerS * EVAPORATION_J_PER_KG * Curve.clip((face - 400) / 300, 0, 1);
    brickFaceK.dx = (inW - inwardW - quenchW) / size.faceJPerK();
    brickFaceK.decayPerS =
        (7.2 * Physics.RADIATION_W_PER_M2K4 * size.brickM2() * face * face * face
                + BRICK_CONVECTION_W_PER_K
                + size.conductanceWPerK())
            / size.faceJPerK();
    brickCoreK.dx =
        (inwardW - CASING_CONDUCTANCE_W_PER_K * (brickCoreK.x - CASING_K)) / size.coreJPerK();
    double strain = Math.max(Math.abs(face - brickCoreK.x) - 350, 0) / 300;
    brickDamage.dx =
        strain * strain * strain / 3600
            + 0.001 * waterKgPerS * Curve.smoothStep((face - 700) / 300);
  }

  boolean isHot() {
    return brickFaceK.x > LIGHTS_OIL_K;
  }

  /** Unused air in the furnace, kg. */
  double airKg() {
    return airMassKg * unusedAirShare();
  }

  double unusedAirShare() {
    return Math.max(unusedAir.x, 1e-4);
  }

  /** A cloud over hot brick or a torch takes fire by itself after 0.8 s in a burnable mixture. */
  boolean ignites(double equivalenceRatio, boolean canIgnite) {
    boolean burnable =
        canIgnite && equivalenceRatio > 0.05 && equivalenceRatio < 3.5 && unusedAirShare() > 0.12;
    ignitionTicks.n = burnable ? ignitionTicks.n + 1 : 0;
    if (ignitionTicks.n < IGNITION_TICKS) {
      return false;
    }
    ignitionTicks.n = 0;
    return true;
  }

  void startBurningAsFormed() {
    burnsTicks.n = BURNS_TICKS;
  }

  /** Counts down the burning of vapour as it forms. */
  void keepBurning(boolean hasSource, boolean isWet) {
    if (!burnsTicks.isSet()) {
      return;
    }
    burnsTicks.n--;
    if (vapourKg.x > 0.01 && isHot()) {
      burnsTicks.n = BURNS_TICKS;
    }
    if (isWet || !hasSource) {
      burnsTicks.n = 0;
    }
  }

  /**
   * Burns the vapour at once.
   *
   * @param equivalenceRatio vapour over what the air can burn
   * @param airKg unused air, kg
   * @return pressure rise, Pa; 0 if the mixture is too rich to burn
   */
  double explode(double equivalenceRatio, double airKg) {
    if (equivalenceRatio > 3.5) {
      return 0;
    }
    double air = airKg;
    double reach = Math.min(1, Math.max(0.1, equivalenceRatio / 1.2));
    double burnedKg =
        nearBurner(equivalenceRatio) > 0.5
            ? Math.min(vapourKg.x, air * reach / Physics.AIR_FOR_OIL)
            : 0.3 * vapourKg.x;
    unusedAir.x = unusedAirShare() * Math.max(1 - Physics.AIR_FOR_OIL * burnedKg / air, 0.02);
    vapourKg.x -= burnedKg;
    return 0.4 * burnedKg * Physics.OIL_HEAT_J_PER_KG / size.volumeM3() * 0.08;
  }

  /** Mixture in the tenth of the furnace next to the burner. */
  private static double nearBurner(double equivalenceRatio) {
    if (equivalenceRatio < 0.12) {
      return 10 * equivalenceRatio;
    }
    return Math.max(equivalenceRatio, 1.2);
  }
}
