package handwheel.plant;

import handwheel.units.Unit;
import java.util.List;

/**
 * Main steam from the drum through the superheater tubes, the main stop and the line to the engine,
 * with the leaks and the cross-connection to the other fire room.
 *
 * <p>States: line pressure after the stop Pa absolute, throttle opening. Flows along the steam's
 * way are positive. Outputs: superheater flow and outlet pressure, flow through the stop, engine
 * steam, back-feed, leaks, line temperature.
 *
 * <p>Assumes no pressure storage before the stop (its flow is solved exactly from a quadratic),
 * choked holes with a discharge coefficient of 0.85, a stop whose conductance goes with the cube of
 * its opening and that lets nothing back, and a twin boiler at fixed pressure behind the bulkhead
 * stop. Left out: cooling of the line, drains of the line, flow to the other room, water hammer.
 *
 * <p>Source: Napier's rule for choked steam (value from memory); the rest engineering estimate.
 */
final class MainSteamLine implements Machine {
  /** Discharge coefficient 0.85 times the choked-flow factor of steam 0.667. */
  private static final double HOLE = 0.56695;

  /** Gas constant of steam in Napier's rule, J/(kg K). */
  private static final double STEAM_J_PER_KGK = 433.81;

  private static final double RATED_OUTLET_K = 727.6;
  private static final double OTHER_ROOM_DENSITY_KG_PER_M3 = 21.32;
  private static final double COOLEST_K = 400;
  private static final double DRAINS_KG_PER_S = 0.45;
  private static final double THROTTLE_LAG_S = 4;

  /** Upper end of the fitted enthalpy of superheated steam, Pa absolute. */
  private static final double MOST_PA = 5e6;

  final State pressurePa = State.atLeast(Physics.ATMOSPHERE_PA, "main-line.pressure");
  final State throttle = State.free("throttle.opening");

  double superheaterKgPerS;
  double superheaterOutletPa;
  double mainStopKgPerS;
  double otherRoomKgPerS;
  double engineKgPerS;
  double temperatureK;
  double leakBeforeStopKgPerS;
  double leakMainRunKgPerS;
  double leakSaturatedKgPerS;
  double superheaterSafetyKgPerS;

  /** Flow of the drum's own safety valves, for the sum of all valves. */
  private double drumSafetyKgPerS;

  private double stopSlope;
  private double otherRoomSlope;

  private final Positions ports;
  private final double flowFactor;
  private final double stopScale;
  private final double capacityKgPerPa;
  private final double engineScale;
  private final double generatorScale;
  private final double otherRoomMaxKgPerS;

  MainSteamLine(PlantNumbers numbers, Positions ports) {
    this.ports = ports;
    flowFactor = numbers.get(PlantNumber.SUPERHEATER_FLOW_FACTOR);
    stopScale = numbers.get(PlantNumber.MAIN_STOP_CONDUCTANCE);
    capacityKgPerPa = numbers.get(PlantNumber.MAIN_LINE_CAPACITY);
    engineScale = numbers.get(PlantNumber.ENGINE_STEAM);
    generatorScale = numbers.get(PlantNumber.GENERATOR_STEAM);
    otherRoomMaxKgPerS = numbers.get(PlantNumber.BULKHEAD_STOP_FLOW);
  }

  @Override
  public List<State> states() {
    return List.of(pressurePa, throttle);
  }

  @Override
  public List<ModelRange> ranges() {
    return List.of(
        ModelRange.below(
            "superheater outlet pressure", Unit.PSIA, MOST_PA, () -> superheaterOutletPa));
  }

  void evaluate(SteamDrum drum, double superheaterOutletK, SafetyValves safeties) {
    double leak =
        HOLE
            * ports.at(Port.LEAK_BEFORE_STOP)
            / Math.sqrt(STEAM_J_PER_KGK * Math.max(superheaterOutletK, COOLEST_K))
            * drum.chokeShare;
    double safety = safeties.superheaterConductance(drum.chokeShare);
    double drains =
        DRAINS_KG_PER_S * ports.at(Port.SUPERHEATER_DRAINS) / Physics.RATED_PA * drum.chokeShare;
    superheaterFlow(drum, leak + safety + drains);
    leakBeforeStopKgPerS = leak * superheaterOutletPa;
    superheaterSafetyKgPerS = safety * superheaterOutletPa;
    drumSafetyKgPerS = safeties.drumKgPerS(drum.pressurePa, drum.chokeShare);
    leakSaturatedKgPerS =
        HOLE
            * ports.at(Port.LEAK_SATURATED)
            * Math.sqrt(drum.pressurePa * drum.sat.steamDensityKgPerM3)
            * drum.chokeShare;
    otherRoom();
    line(superheaterOutletK);
    throttle.dx = (ports.at(Port.THROTTLE_ORDERED) - throttle.x) / THROTTLE_LAG_S;
  }

  /**
   * Solves W2 = Kr (p - psh), W = Gp psh + gm (psh - pl) for the flow W.
   *
   * @param beforeStop Gp, conductance of all that blows off before the stop, kg/(s Pa)
   */
  private void superheaterFlow(SteamDrum drum, double beforeStop) {
    double kr = flowFactor * drum.sat.steamDensityKgPerM3;
    double p = drum.pressurePa;
    double pl = pressurePa.x;
    double opening = ports.at(Port.MAIN_STOP);
    double stop = stopScale * opening * opening * opening;
    boolean passes = stop > 0 && pl < p;
    if (passes) {
      flow(kr, p, beforeStop + stop, beforeStop * p + stop * (p - pl));
      passes = superheaterOutletPa >= pl;
    }
    if (passes) {
      double w = superheaterKgPerS;
      mainStopKgPerS = Math.max(w - beforeStop * superheaterOutletPa, 0);
      stopSlope = stop * kr / (2 * (beforeStop + stop) * w + kr) * (1 + 2 * w * beforeStop / kr);
    } else {
      flow(kr, p, beforeStop, beforeStop * p);
      mainStopKgPerS = 0;
      stopSlope = 0;
    }
  }

  private void flow(double kr, double p, double conductance, double drive) {
    double w = 2 * kr * drive / (kr + Math.sqrt(kr * kr + 4 * conductance * kr * drive));
    superheaterKgPerS = w;
    superheaterOutletPa = p - w * w / kr;
  }

  private void otherRoom() {
    otherRoomKgPerS = 0;
    otherRoomSlope = 0;
    double opening = ports.at(Port.BULKHEAD_STOP);
    double own = ports.at(Port.OTHER_ROOM_STEAM);
    double drop = ports.at(Port.OTHER_ROOM_PRESSURE) - pressurePa.x - own / stopScale;
    if (opening > 0 && drop > 0) {
      double k = flowFactor * OTHER_ROOM_DENSITY_KG_PER_M3;
      double root = Math.sqrt(k * drop);
      double most = otherRoomMaxKgPerS * opening;
      otherRoomKgPerS = Curve.clip(root - own, 0, most);
      if (otherRoomKgPerS > 0 && otherRoomKgPerS < most) {
        otherRoomSlope = k / (2 * root);
      }
    }
  }

  private void line(double superheaterOutletK) {
    double in = mainStopKgPerS + otherRoomKgPerS;
    temperatureK =
        Math.max(
            (mainStopKgPerS * superheaterOutletK
                    + RATED_OUTLET_K * otherRoomKgPerS
                    + 1e-6 * superheaterOutletK)
                / (in + 1e-6),
            COOLEST_K);
    double pl = pressurePa.x;
    double choke = Physics.chokeShare(pl);
    double engine = engineConductance(pl) * Math.sqrt(RATED_OUTLET_K / temperatureK) * choke;
    double leak =
        HOLE * ports.at(Port.LEAK_MAIN_RUN) / Math.sqrt(STEAM_J_PER_KGK * temperatureK) * choke;
    engineKgPerS = engine * pl;
    leakMainRunKgPerS = leak * pl;
    pressurePa.dx = (in - engineKgPerS - leakMainRunKgPerS) / capacityKgPerPa;
    pressurePa.decayPerS = (stopSlope + otherRoomSlope + engine + leak) / capacityKgPerPa;
  }

  /** Engine by throttle, generator held by its own governor as long as it can, kg/(s Pa). */
  private double engineConductance(double pl) {
    double share = Physics.share(pl);
    double governed =
        Math.min(
            ports.at(Port.GENERATOR_LOAD) * Curve.clip(1 / Math.max(share, 0.05), 1, 1.35), 1.35);
    return (engineScale * throttle.x + generatorScale * governed) / Physics.RATED_PA;
  }

  double safetyKgPerS() {
    return superheaterSafetyKgPerS + drumSafetyKgPerS;
  }
}
