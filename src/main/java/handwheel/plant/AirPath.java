package handwheel.plant;

import java.util.List;

/**
 * Air from the box through the registers, furnaces and uptakes to the stack.
 *
 * <p>State: air box pressure, Pa above the atmosphere. Air from the box into the furnaces is
 * positive and never turns. Outputs: air to each furnace and register, furnace pressure, water
 * carried through the registers and its share on each burner.
 *
 * <p>Assumes quasi-steady flow, one pressure for both furnaces, a shut register leaking three per
 * cent. Left out: stack draft with the blowers off.
 *
 * <p>Source: turbulent flow resistance; figures engineering estimate.
 */
final class AirPath implements Machine {
  private static final Burner[] ALL = Burner.values();
  private static final double SHUT_REGISTER = 0.03;
  private static final double RUPTURE_AS_GAS = 1.6;

  /** How much of the water each register gets, S1 to H3; the nearest to the ducts most. */
  private static final double[] WATER_SHARE = {1.4, 1.2, 1.0, 0.8, 0.6, 1.2, 1.0, 0.8};

  final State boxPa = State.free("air-box.pressure");

  double totalKgPerS;
  double furnacePa;
  double waterToFurnacesKgPerS;
  double waterToBilgeKgPerS;

  private final double[] register = new double[ALL.length];
  private double saturatedConductance;
  private double superheaterConductance;
  private double waterWeight;

  private final Positions ports;
  private final double registerScale;
  private final double resistanceScale;
  private final double capacityKgPerPa;

  AirPath(PlantNumbers numbers, Positions ports) {
    this.ports = ports;
    registerScale = numbers.get(PlantNumber.REGISTER_CONDUCTANCE);
    resistanceScale = numbers.get(PlantNumber.GAS_PATH_RESISTANCE);
    capacityKgPerPa = numbers.get(PlantNumber.AIR_BOX_CAPACITY);
  }

  @Override
  public List<State> states() {
    return List.of(boxPa);
  }

  void evaluate(
      ForcedDraftBlower first,
      ForcedDraftBlower second,
      double tubeKgPerS,
      double saturatedGasK,
      double superheaterGasK) {
    registers();
    double kt = saturatedConductance + superheaterConductance;
    double mixK =
        Math.max(
            (saturatedGasK * saturatedConductance + superheaterGasK * superheaterConductance) / kt,
            300);
    double resistance = resistanceScale * (0.25 + 0.75 * mixK / 1700);
    double rupture = RUPTURE_AS_GAS * tubeKgPerS;
    double back = resistance * rupture * rupture;
    totalKgPerS =
        Math.max(Curve.signedRoot(boxPa.x - back, 60) / Math.sqrt(1 / (kt * kt) + resistance), 0);
    double gas = totalKgPerS + rupture;
    furnacePa = resistance * gas * gas;
    boxPa.dx = (first.airKgPerS + second.airKgPerS - totalKgPerS) / capacityKgPerPa;
    boxPa.decayPerS =
        (first.airSlope() + second.airSlope() + totalKgPerS / (2 * Math.max(boxPa.x, 100)))
            / capacityKgPerPa;
    water(first, second);
  }

  private void registers() {
    saturatedConductance = 0;
    superheaterConductance = 0;
    waterWeight = 0;
    for (Burner burner : ALL) {
      int i = burner.index();
      double k = registerScale * Math.max(ports.at(Port.REGISTER_S1, burner), SHUT_REGISTER);
      register[i] = k;
      waterWeight += k * WATER_SHARE[i];
      if (burner.side() == Side.SATURATED) {
        saturatedConductance += k;
      } else {
        superheaterConductance += k;
      }
    }
  }

  private void water(ForcedDraftBlower first, ForcedDraftBlower second) {
    double toBox = first.waterToBoxKgPerS + second.waterToBoxKgPerS;
    waterToFurnacesKgPerS = 0.7 * toBox;
    waterToBilgeKgPerS = first.waterToBilgeKgPerS + second.waterToBilgeKgPerS + 0.3 * toBox;
  }

  double sideKgPerS(Side side) {
    return totalKgPerS * conductance(side) / (saturatedConductance + superheaterConductance);
  }

  double burnerKgPerS(Burner burner) {
    return sideKgPerS(burner.side()) * register[burner.index()] / conductance(burner.side());
  }

  double burnerWaterKgPerS(Burner burner) {
    if (waterToFurnacesKgPerS < 1e-6) {
      return 0;
    }
    int i = burner.index();
    return waterToFurnacesKgPerS * register[i] * WATER_SHARE[i] / waterWeight;
  }

  private double conductance(Side side) {
    return side == Side.SATURATED ? saturatedConductance : superheaterConductance;
  }
}
