package handwheel.plant;

import handwheel.water.SaturationTable;
import java.util.List;

/**
 * Feed water: condensate into the deaerating tank, booster, main and emergency feed pump, one feed
 * check for both.
 *
 * <p>States: speed of both pumps (1 is rated), deaerating tank kg and K, reserve tank kg,
 * condensate kg/s. Feed into the boiler is positive. Outputs: flow, enthalpy and temperature of the
 * feed, steam of the pumps.
 *
 * <p>Assumes a square-law pump and check, a make-up the engine-room watch keeps. The main pump's
 * run-out is a fixed flow as long as its shock loss is 0, the usual one; with a shock loss its head
 * falls, beyond the rated flow, with the square of what it delivers more, and the rated flow goes
 * with the speed. Left out: the condenser, pump cavitation, check valve inertia.
 *
 * <p>Source: affinity laws of pumps; head curve with a shock (incidence) loss as in A. J.
 * Stepanoff, Centrifugal and Axial Flow Pumps (value from memory); figures invented.
 */
final class FeedSystem implements Machine {
  private static final double WATER_J_PER_KGK = 4200;
  private static final double DEAERATED_K = 394;
  private static final double FEED_KG_PER_M3 = 940;
  private static final double CONDENSATE_K = 330;
  private static final double RESERVE_K = 300;

  /** Flow of the main pump at which its wheel takes the water without shock, rated speed. */
  static final double RATED_KG_PER_S = 14;

  final State mainSpeed = State.free("feed.main-pump.speed");
  final State emergencySpeed = State.free("feed.emergency-pump.speed");
  final State deaeratingTankKg = State.atLeast(0, "deaerating-tank.mass");
  final State deaeratingTankK = State.free("deaerating-tank.temperature");
  final State reserveTankKg = State.atLeast(0, "reserve-tank.mass");
  final State condensateKgPerS = State.free("condensate.flow");

  double flowKgPerS;

  /** Feed that reaches the drum, what a holed economizer loses taken off, kg/s. */
  double toDrumKgPerS;

  double economizerLeakKgPerS;
  double mainKgPerS;
  double emergencyKgPerS;
  double enthalpyJPerKg;
  double temperatureK;
  double pumpSteamKgPerS;

  private double suctionShare;
  private double tankHeadPa;
  private double mainHeadPa;
  private double emergencyHeadPa;

  private final SaturationTable table;
  private final Positions ports;
  private final double mainScalePa;
  private final double mainLoss;
  private final double mainMaxKgPerS;
  private final double mainShock;
  private final double emergencyScalePa;
  private final double emergencyLoss;
  private final double boosterPa;
  private final double checkScale;

  FeedSystem(PlantNumbers numbers, SaturationTable table, Positions ports) {
    this.table = table;
    this.ports = ports;
    mainScalePa = numbers.get(PlantNumber.FEED_MAIN_PUMP_HEAD);
    mainLoss = numbers.get(PlantNumber.FEED_MAIN_PUMP_LOSS);
    mainMaxKgPerS = numbers.get(PlantNumber.FEED_MAIN_PUMP_FLOW);
    mainShock = numbers.get(PlantNumber.FEED_MAIN_PUMP_SHOCK_LOSS);
    emergencyScalePa = numbers.get(PlantNumber.FEED_EMERGENCY_PUMP_HEAD);
    emergencyLoss = numbers.get(PlantNumber.FEED_EMERGENCY_PUMP_LOSS);
    boosterPa = numbers.get(PlantNumber.FEED_BOOSTER_HEAD);
    checkScale = numbers.get(PlantNumber.FEED_CHECK_CONDUCTANCE);
  }

  @Override
  public List<State> states() {
    return List.of(
        mainSpeed,
        emergencySpeed,
        deaeratingTankKg,
        deaeratingTankK,
        reserveTankKg,
        condensateKgPerS);
  }

  void evaluate(double drumPa, double auxiliaryShare) {
    boolean isOnTank = ports.isAt(Port.EMERGENCY_FEED_SUCTION, 0);
    double check = checkScale * Math.max(ports.at(Port.FEED_CHECK), 1e-3);
    double checkLoss = 1 / (check * check);
    heads(isOnTank);
    mainKgPerS = main(mainHeadPa - drumPa, mainLoss + checkLoss);
    emergencyKgPerS = flow(emergencyHeadPa - drumPa, emergencyLoss + checkLoss);
    flowKgPerS = mainKgPerS + emergencyKgPerS;
    double hole = 0.6 * ports.at(Port.ECONOMIZER_LEAK);
    double abovePa = Math.max(drumPa - Physics.ATMOSPHERE_PA, 0);
    economizerLeakKgPerS = Math.min(hole * Math.sqrt(2 * FEED_KG_PER_M3 * abovePa), flowKgPerS);
    toDrumKgPerS = flowKgPerS - economizerLeakKgPerS;
    double tankK = deaeratingTankK.x;
    double emergencyK = isOnTank ? tankK : RESERVE_K;
    double tankEnthalpy = table.waterEnthalpyJPerKg(tankK);
    double emergencyEnthalpy = isOnTank ? tankEnthalpy : table.waterEnthalpyJPerKg(RESERVE_K);
    enthalpyJPerKg =
        (mainKgPerS * tankEnthalpy + emergencyKgPerS * emergencyEnthalpy) / (flowKgPerS + 1e-9);
    temperatureK =
        flowKgPerS > 1e-6
            ? (mainKgPerS * tankK + emergencyKgPerS * emergencyK) / flowKgPerS
            : tankK;
    pumps(auxiliaryShare);
  }

  private void heads(boolean isOnTank) {
    double booster = ports.at(Port.BOOSTER_PUMP);
    suctionShare = Curve.smoothStep((deaeratingTankKg.x - 150) / 150) * booster;
    tankHeadPa = table.pressurePa(deaeratingTankK.x) + boosterPa * booster;
    mainHeadPa = (mainScalePa * mainSpeed.x * mainSpeed.x + tankHeadPa) * suctionShare;
    double speed = emergencySpeed.x;
    double staticPa = isOnTank ? tankHeadPa * suctionShare : 0.15e6;
    double share = isOnTank ? suctionShare : Curve.smoothStep((reserveTankKg.x - 50) / 100);
    emergencyHeadPa = (emergencyScalePa * speed * speed + staticPa) * share;
  }

  private double main(double excessPa, double loss) {
    double square = flow(excessPa, loss);
    if (mainShock <= 0) {
      return Math.min(square, mainMaxKgPerS);
    }
    return beyondRated(square, loss, mainShock, RATED_KG_PER_S * mainSpeed.x);
  }

  /**
   * Solves loss Q2 + shock (Q - rated)2 = loss square2 for the flow Q beyond the rated one.
   *
   * @param square flow without shock, kg/s
   * @param loss Pa s2/kg2
   * @param shock Pa s2/kg2
   * @param rated flow without shock losses at this speed, kg/s
   */
  static double beyondRated(double square, double loss, double shock, double rated) {
    if (square <= rated) {
      return square;
    }
    double both = loss + shock;
    double missing = shock * rated * rated - loss * square * square;
    return (shock * rated + Math.sqrt(shock * shock * rated * rated - both * missing)) / both;
  }

  private static double flow(double excessPa, double loss) {
    return excessPa > 0 ? Math.sqrt(excessPa / loss) : 0;
  }

  private void pumps(double auxiliaryShare) {
    boolean isMainOn = ports.isOn(Port.MAIN_FEED_PUMP);
    double target = isMainOn && suctionShare > 0.3 ? Curve.clip(1.6 * auxiliaryShare, 0, 1) : 0;
    mainSpeed.dx = (target - mainSpeed.x) / 3;
    double emergency = ports.at(Port.EMERGENCY_FEED_PUMP) * Curve.clip(1.8 * auxiliaryShare, 0, 1);
    emergencySpeed.dx = (emergency - emergencySpeed.x) / 2;
    double steam = Math.min(auxiliaryShare, 1.1);
    double mainSteam =
        isMainOn ? 0.42 * (0.35 + 0.65 * mainKgPerS / 14) * mainSpeed.x * mainSpeed.x * steam : 0;
    pumpSteamKgPerS = mainSteam + 0.25 * emergencySpeed.x * emergencySpeed.x * steam;
  }

  /** Tanks and condensate, once the steam of engine and auxiliaries is known. */
  void tanks(double blowerSteamKgPerS, double engineKgPerS, double auxiliaryKgPerS) {
    boolean isOnTank = ports.isAt(Port.EMERGENCY_FEED_SUCTION, 0);
    double kg = deaeratingTankKg.x;
    double t = deaeratingTankK.x;
    double back = condensateKgPerS.x;
    double makeUp = reserveTankKg.x > 50 ? Curve.clip(0.004 * (2200 - kg), 0, 4) : 0;
    condensateKgPerS.dx = (engineKgPerS + auxiliaryKgPerS - back) / 20;
    double lost = ports.at(Port.DEAERATING_TANK_LOSS) * Curve.smoothStep(kg / 50);
    deaeratingTankKg.dx =
        0.97 * back + makeUp - mainKgPerS - (isOnTank ? emergencyKgPerS : 0) - lost;
    reserveTankKg.dx = -makeUp - (isOnTank ? 0 : emergencyKgPerS);
    double wanted =
        1.2e5 * (DEAERATED_K - t) + WATER_J_PER_KGK * 64 * back + WATER_J_PER_KGK * 94 * makeUp;
    double exhaust = 2.2e6 * (blowerSteamKgPerS + pumpSteamKgPerS) + 0.22e6 * engineKgPerS;
    double heat = Curve.clip(wanted, 0, exhaust);
    deaeratingTankK.dx =
        (heat
                - WATER_J_PER_KGK * back * (t - CONDENSATE_K)
                - WATER_J_PER_KGK * makeUp * (t - RESERVE_K))
            / (WATER_J_PER_KGK * Math.max(kg, 200));
  }

  double pressurePa() {
    return Math.max(mainHeadPa, emergencyHeadPa);
  }
}
