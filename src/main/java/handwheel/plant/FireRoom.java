package handwheel.plant;

import handwheel.water.SaturationTable;
import handwheel.water.SuperheatedSteam;
import java.util.List;

/**
 * The compartment in two levels, with its ventilation, the steam that leaks into it and the smoke
 * of an oil fire.
 *
 * <p>States: those of both levels, oxygen mass fraction of the upper one. Air and steam into a
 * level are positive. Inputs: leaks and their heat, steam at the boiler fronts, casing heat, fire,
 * fans, door. Outputs: temperatures, vapour, dose.
 *
 * <p>Assumes one atmosphere throughout: the exhaust takes the hot layer, what it lacks comes in
 * low, the supply pushes sixty per cent to the lower level, what finds no way out at the top is
 * driven down. Left out: wind, steam in other spaces, fire expansion.
 *
 * <p>Source: zone model, engineering estimate.
 */
final class FireRoom implements Machine {
  private static final double SUPPLY_K = 305.15;
  static final double SUPPLY_VAPOUR = 0.018;
  private static final double STEAM_POINT_K = 373.15;
  static final double FRESH_OXYGEN = 0.232;
  private static final double LEAK_STEAM_J_PER_KGK = 1950;
  private static final double AIR_J_PER_KGK = 1010;
  private static final double HULL_K = 303;

  final Level upper;
  final Level lower;
  final State oxygen = State.free("space.upper.oxygen");

  double leakKgPerS;
  double upKgPerS;
  double downKgPerS;
  double topKgPerS;
  double makeUpKgPerS;

  private double frontsKgPerS;
  private double supplyKgPerS;
  private double lowInKgPerS;
  private double stirKgPerS;
  private double jetK;

  private final Positions ports;
  private final double wallM2;
  private final double wallJPerK;
  private final double supplyScale;
  private final double exhaustScale;

  FireRoom(PlantNumbers numbers, SaturationTable table, Positions ports) {
    this.ports = ports;
    wallM2 = numbers.get(PlantNumber.SPACE_WALL_AREA);
    wallJPerK = numbers.get(PlantNumber.SPACE_WALL_CAPACITY);
    supplyScale = numbers.get(PlantNumber.SPACE_SUPPLY);
    exhaustScale = numbers.get(PlantNumber.SPACE_EXHAUST);
    upper = new Level("space.upper", numbers.get(PlantNumber.SPACE_UPPER_VOLUME), wallM2, table);
    lower = new Level("space.lower", numbers.get(PlantNumber.SPACE_LOWER_VOLUME), wallM2, table);
  }

  @Override
  public List<State> states() {
    return List.of(
        upper.airK,
        upper.vapour,
        lower.airK,
        lower.vapour,
        upper.wallK,
        lower.wallK,
        upper.dose,
        lower.dose,
        upper.sootKgPerM3,
        lower.sootKgPerM3,
        oxygen);
  }

  /** First part: what leaks in and how hot it is. */
  void leaks(SteamDrum drum, MainSteamLine line, double superheaterOutletK, AirPath air) {
    double main = line.leakBeforeStopKgPerS + line.leakMainRunKgPerS;
    double saturated = line.leakSaturatedKgPerS;
    double forced = Curve.smoothStep((air.furnacePa - air.boxPa.x) / 5000);
    double tube = drum.tubeKgPerS * 0.5 * (0.02 + 0.25 * forced);
    leakKgPerS = main + saturated + tube;
    double heatW = saturated * drum.sat.steamEnthalpyJPerKg + tube * 2.69e6;
    if (main > 0) {
      heatW += main * mainEnthalpy(drum, line, superheaterOutletK);
    }
    double enthalpy = leakKgPerS > 0 ? heatW / leakKgPerS : 0;
    jetK = Curve.clip(STEAM_POINT_K + (enthalpy - 2.676e6) / 2050, STEAM_POINT_K, 760);
  }

  private double mainEnthalpy(SteamDrum drum, MainSteamLine line, double superheaterOutletK) {
    boolean isBeforeStop = ports.at(Port.LEAK_BEFORE_STOP) > 0;
    double pa = isBeforeStop ? line.superheaterOutletPa : line.pressurePa.x;
    double k = isBeforeStop ? superheaterOutletK : line.temperatureK;
    return SuperheatedSteam.enthalpyJPerKg(
        Math.max(pa, 2 * Physics.ATMOSPHERE_PA), Math.max(k, drum.saturationTemperatureK.x + 1));
  }

  /** Second part: ventilation and both levels. */
  void evaluate(AirPath air, double saturatedBrickK, double casingW, OilFire fire) {
    frontsKgPerS =
        0.03 * air.waterToFurnacesKgPerS * Curve.clip((saturatedBrickK - 400) / 300, 0, 1);
    upper.look();
    lower.look();
    ventilation();
    upperLevel(casingW, fire.heatW.x);
    lowerLevel(casingW, fire.heatW.x);
    smoke(fire.burnsKgPerS());
  }

  private void ventilation() {
    double power = ports.isOn(Port.POWER_LOST) ? 0 : 1;
    double fan = power * ports.at(Port.SUPPLY_FAN);
    supplyKgPerS = supplyScale * fan;
    double exhaust = exhaustScale * upper.densityKgPerM3 * (power * ports.at(Port.EXHAUST_FAN));
    double in = supplyKgPerS + leakKgPerS + frontsKgPerS;
    makeUpKgPerS = Math.max(exhaust - in, 0);
    topKgPerS = Math.min(makeUpKgPerS + in, exhaust + 3 + 6 * ports.at(Port.UPPER_DOOR));
    double rises = topKgPerS - 0.4 * supplyKgPerS - leakKgPerS;
    upKgPerS = Math.max(rises, 0);
    downKgPerS = Math.max(-rises, 0);
    lowInKgPerS = 0.6 * supplyKgPerS + makeUpKgPerS;
    double layered = 1 + Math.max(upper.airK.x - lower.airK.x, 0) / 15;
    stirKgPerS = Math.min(3 * (0.3 + 0.7 * fan) / layered + 2 * leakKgPerS, 40);
  }

  private void upperLevel(double casingW, double fireW) {
    Level u = upper;
    double t = u.airK.x;
    double wall = u.wallK.x;
    double fresh = 0.4 * supplyKgPerS;
    double mixed = stirKgPerS + upKgPerS;
    double emissivity = 0.1 + 0.7 * (1 - Decay.of(24_000 * u.sootKgPerM3.x));
    double radiationW =
        0.6
            * emissivity
            * Physics.RADIATION_W_PER_M2K4
            * wallM2
            * (Physics.fourthPower(t) - Physics.fourthPower(wall));
    double capacity = u.massKg * u.heatCapacityJPerKgK;
    double convection = 12 * wallM2;
    u.airK.dx =
        (LEAK_STEAM_J_PER_KGK * leakKgPerS * (jetK - t)
                + AIR_J_PER_KGK * fresh * (SUPPLY_K - t)
                + mixed * lower.heatCapacityJPerKgK * (lower.airK.x - t)
                + 0.7 * fireW
                + 0.65 * casingW
                - convection * (t - wall)
                - radiationW
                + 2.4e6 * u.fogKgPerS)
            / capacity;
    u.airK.decayPerS =
        (LEAK_STEAM_J_PER_KGK * leakKgPerS + AIR_J_PER_KGK * (fresh + mixed) + convection)
            / capacity;
    double y = u.vapour.x;
    u.vapour.dx =
        (leakKgPerS * (1 - y)
                + fresh * (SUPPLY_VAPOUR - y)
                + mixed * (lower.vapour.x - y)
                - (u.condensesKgPerS + u.fogKgPerS) * (1 - y))
            / u.massKg;
    u.vapour.decayPerS = vapourDecay(u, leakKgPerS + fresh + mixed);
    u.wallK.dx = wallRate(u, convection) + radiationW / wallJPerK;
  }

  private void lowerLevel(double casingW, double fireW) {
    Level l = lower;
    double t = l.airK.x;
    double mixed = stirKgPerS + downKgPerS;
    double capacity = l.massKg * l.heatCapacityJPerKgK;
    double convection = 10 * wallM2;
    l.airK.dx =
        (LEAK_STEAM_J_PER_KGK * frontsKgPerS * (STEAM_POINT_K - t)
                + AIR_J_PER_KGK * lowInKgPerS * (SUPPLY_K - t)
                + mixed * upper.heatCapacityJPerKgK * (upper.airK.x - t)
                + 0.1 * fireW
                + 0.35 * casingW
                - convection * (t - l.wallK.x)
                + 2.4e6 * l.fogKgPerS)
            / capacity;
    l.airK.decayPerS =
        (LEAK_STEAM_J_PER_KGK * (frontsKgPerS + downKgPerS)
                + AIR_J_PER_KGK * (lowInKgPerS + stirKgPerS)
                + convection)
            / capacity;
    double y = l.vapour.x;
    l.vapour.dx =
        (frontsKgPerS * (1 - y)
                + lowInKgPerS * (SUPPLY_VAPOUR - y)
                + mixed * (upper.vapour.x - y)
                - (l.condensesKgPerS + l.fogKgPerS) * (1 - y))
            / l.massKg;
    l.vapour.decayPerS = vapourDecay(l, frontsKgPerS + lowInKgPerS + mixed);
    l.wallK.dx = wallRate(l, convection);
  }

  private double vapourDecay(Level level, double flowKgPerS) {
    double walls = 0.012 * wallM2 / Math.max(1 - level.vapour.x, 0.05);
    return (flowKgPerS + walls) / level.massKg + (level.fogKgPerS > 0 ? 1 / 1.5 : 0);
  }

  private double wallRate(Level level, double convection) {
    double wall = level.wallK.x;
    return (convection * (level.airK.x - wall)
            + 2.3e6 * level.condensesKgPerS
            - 6 * wallM2 * (wall - HULL_K))
        / wallJPerK;
  }

  /** What thins the gases of the upper level, kg/s. */
  double upperFreshKgPerS() {
    return 0.4 * supplyKgPerS + leakKgPerS;
  }

  /** What thins the gases of the lower level, kg/s. */
  double lowerFreshKgPerS() {
    return lowInKgPerS + frontsKgPerS;
  }

  /** Air of the lower level that comes into the upper one, kg/s. */
  double risesKgPerS() {
    return stirKgPerS + upKgPerS;
  }

  /** Air of the upper level that comes into the lower one, kg/s. */
  double sinksKgPerS() {
    return stirKgPerS + downKgPerS;
  }

  /** Share of its oxygen the upper level has lost. */
  double oxygenLost() {
    return 1 - oxygen.x / FRESH_OXYGEN;
  }

  private void smoke(double burnsKgPerS) {
    double fresh = 0.4 * supplyKgPerS;
    double soot = upper.sootShare();
    double below = lower.sootShare();
    upper.sootKgPerM3.dx =
        (0.016 * burnsKgPerS
                - (fresh + leakKgPerS) * soot
                + (stirKgPerS + upKgPerS) * (below - soot))
            / upper.volumeM3;
    lower.sootKgPerM3.dx =
        (0.002 * burnsKgPerS
                - (lowInKgPerS + frontsKgPerS) * below
                + (stirKgPerS + downKgPerS) * (soot - below))
            / lower.volumeM3;
    double lack = FRESH_OXYGEN - oxygen.x;
    oxygen.dx =
        ((fresh + upKgPerS) * lack
                - leakKgPerS * oxygen.x
                + 0.5 * stirKgPerS * lack
                - 3.3 * burnsKgPerS)
            / upper.massKg;
  }
}
