package handwheel.plant;

import java.util.List;

/**
 * Fuel oil from the service tanks through strainer, pump, heater and header, with an oil spray leak
 * on a line of choice.
 *
 * <p>States: header pressure Pa above the atmosphere, air in the suction, water in strainer, heater
 * and header (shares), oil temperature K, both tanks kg. Oil towards the burners is positive. The
 * header gauge stands upstream of the trips: after a trip it rises to the pump governor's set
 * pressure, so a trip is proved on the burner line, whose pressure is algebraic here.
 *
 * <p>Assumes a pump with its own pressure governor, a suction line that empties and is primed
 * again. Left out: oil trapped between a trip and shut roots, viscosity beyond its effect on
 * atomizing.
 *
 * <p>Source: engineering estimate; hold-ups invented.
 */
final class FuelSystem implements Machine {
  private static final double GOVERNOR_MARGIN_PA = 0.12e6;
  private static final double GOVERNOR_BAND_PA = 0.4e6;
  private static final double BUNKER_K = 311;
  private static final double HEATER_KG = 60;
  private static final double PRIMED = 0.4;

  final State headerPa = State.atLeast(0, "fuel.header.pressure");
  final State airInSuction = State.dyingShare("fuel.air-in-suction");
  final State waterStrainer = State.dying("fuel.water-in-strainer");
  final State waterHeater = State.dying("fuel.water-in-heater");
  final State waterHeader = State.dying("fuel.water-at-burners");
  final State temperatureK = State.free("fuel.temperature");
  final State tank1Kg = State.atLeast(0, "fuel.tank.1.mass");
  final State tank2Kg = State.atLeast(0, "fuel.tank.2.mass");

  double burnersKgPerS;
  double sprayKgPerS;
  double heaterKgPerS;
  double pumpSteamKgPerS;

  private final Positions ports;
  private final double capacityKgPerPa;
  private final double steamPumpKgPerS;
  private final double electricPumpKgPerS;
  private final double handPumpKgPerS;
  private final double suctionKg;
  private final double strainerKg;
  private final double heaterKg;
  private final double headerKg;

  FuelSystem(PlantNumbers numbers, Positions ports) {
    this.ports = ports;
    capacityKgPerPa = numbers.get(PlantNumber.FUEL_HEADER_CAPACITY);
    steamPumpKgPerS = numbers.get(PlantNumber.FUEL_STEAM_PUMP);
    electricPumpKgPerS = numbers.get(PlantNumber.FUEL_ELECTRIC_PUMP);
    handPumpKgPerS = numbers.get(PlantNumber.FUEL_HAND_PUMP);
    suctionKg = numbers.get(PlantNumber.FUEL_SUCTION_LINE);
    strainerKg = numbers.get(PlantNumber.FUEL_STRAINER_HOLD_UP);
    heaterKg = numbers.get(PlantNumber.FUEL_HEATER_HOLD_UP);
    headerKg = numbers.get(PlantNumber.FUEL_HEADER_HOLD_UP);
  }

  @Override
  public List<State> states() {
    return List.of(
        headerPa,
        airInSuction,
        waterStrainer,
        waterHeater,
        waterHeader,
        temperatureK,
        tank1Kg,
        tank2Kg);
  }

  void evaluate(double toBurnersKgPerS, double auxiliaryShare, double roomK) {
    burnersKgPerS = toBurnersKgPerS;
    sprayKgPerS = 0.8 * ports.at(Port.OIL_SPRAY) * Math.sqrt(1720 * headerPa.x) * sprayOpening();
    suction();
    header(auxiliaryShare);
    holdUps();
    heat(auxiliaryShare, roomK);
  }

  private double sprayOpening() {
    return switch ((int) ports.at(Port.OIL_SPRAY_PLACE)) {
      case 0 -> ports.at(Port.FUEL_TRIP_SATURATED);
      case 1 -> ports.at(Port.FUEL_TRIP_SUPERHEATER);
      default -> 1;
    };
  }

  private boolean isOnTank1() {
    return ports.isAt(Port.FUEL_SUCTION, 0);
  }

  private void suction() {
    double kg = isOnTank1() ? tank1Kg.x : tank2Kg.x;
    double valve = ports.at(isOnTank1() ? Port.TANK_VALVE_1 : Port.TANK_VALVE_2);
    double clear =
        1 - ports.at(isOnTank1() ? Port.TANK_OUTLET_BLOCKED_1 : Port.TANK_OUTLET_BLOCKED_2);
    double open = valve * clear * Curve.smoothStep(kg / 150) * ports.at(Port.STRAINER);
    double ratePerS = open < PRIMED ? Math.max(burnersKgPerS, 0.15) / suctionKg : 0.25;
    airInSuction.dx = ratePerS * (1 - Curve.clip(2.5 * open, 0, 1) - airInSuction.x);
    airInSuction.decayPerS = ratePerS;
    double drawn = -burnersKgPerS - sprayKgPerS;
    tank1Kg.dx = isOnTank1() ? drawn : 0;
    tank2Kg.dx = isOnTank1() ? 0 : drawn;
  }

  private void header(double auxiliaryShare) {
    double oil = 1 - airInSuction.x;
    double pump = pumpKgPerS(auxiliaryShare) * oil * Math.sqrt(oil);
    double error = ports.at(Port.FUEL_GOVERNOR) + GOVERNOR_MARGIN_PA - headerPa.x;
    boolean isGoverning = error > 0 && error < GOVERNOR_BAND_PA;
    double out = burnersKgPerS + sprayKgPerS;
    headerPa.dx =
        (pump * Curve.clip(error / GOVERNOR_BAND_PA, 0, 1) - out - 1e-8 * headerPa.x)
            / capacityKgPerPa;
    headerPa.decayPerS =
        ((isGoverning ? pump / GOVERNOR_BAND_PA : 0) + out / (2 * Math.max(headerPa.x, 3e4)))
            / capacityKgPerPa;
  }

  private double pumpKgPerS(double auxiliaryShare) {
    pumpSteamKgPerS = ports.isAt(Port.FUEL_PUMP, 0) ? 0.06 * Math.min(auxiliaryShare, 1) : 0;
    return switch ((int) ports.at(Port.FUEL_PUMP)) {
      case 0 -> steamPumpKgPerS * Curve.clip(1.5 * auxiliaryShare, 0, 1);
      case 1 -> ports.isOn(Port.POWER_LOST) ? 0 : electricPumpKgPerS;
      case 2 -> handPumpKgPerS;
      default -> 0;
    };
  }

  private void holdUps() {
    double drawn = ports.at(isOnTank1() ? Port.WATER_IN_TANK_1 : Port.WATER_IN_TANK_2);
    waterStrainer.dx = burnersKgPerS / strainerKg * (drawn - waterStrainer.x);
    waterHeater.dx = burnersKgPerS / heaterKg * (waterStrainer.x - waterHeater.x);
    waterHeader.dx = burnersKgPerS / headerKg * (waterHeater.x - waterHeader.x);
  }

  private void heat(double auxiliaryShare, double roomK) {
    double t = temperatureK.x;
    heaterKgPerS =
        0.10
            * ports.at(Port.FUEL_HEATER)
            * auxiliaryShare
            * Curve.clip((ports.at(Port.FUEL_HEATER_THERMOSTAT) - t) / 10, 0, 1);
    temperatureK.dx =
        (Physics.OIL_J_PER_KGK * burnersKgPerS * (BUNKER_K - t)
                + 2.1e6 * heaterKgPerS
                - 60 * (t - roomK))
            / (HEATER_KG * Physics.OIL_J_PER_KGK);
  }

  /** Opening between header and burner line of a side: trip times header valve, at most 1. */
  double burnerLinePa(Side side) {
    boolean isSaturated = side == Side.SATURATED;
    double valve =
        ports.at(isSaturated ? Port.HEADER_VALVE_SATURATED : Port.HEADER_VALVE_SUPERHEATER);
    double trip = ports.at(isSaturated ? Port.FUEL_TRIP_SATURATED : Port.FUEL_TRIP_SUPERHEATER);
    double open = Math.min(valve, 1) * trip;
    return headerPa.x * open * open;
  }

  double higherBurnerLinePa() {
    return Math.max(burnerLinePa(Side.SATURATED), burnerLinePa(Side.SUPERHEATER));
  }
}
