package handwheel.plant;

import java.util.List;

/**
 * Air from the box through the registers, furnaces and uptakes to the stack.
 *
 * <p>States: air box pressure, Pa above the atmosphere; draft of the stack, Pa. Air from the box
 * into the furnaces is positive and never turns. Outputs: air to each furnace and register, furnace
 * pressure, water carried through the registers and its share on each burner.
 *
 * <p>Assumes quasi-steady flow, one pressure for both furnaces, a shut register leaking three per
 * cent. The draft is that of a column of gas as hot as behind the economizer, in outside air of 90
 * F, and follows the gas with a lag of 10 s, the time in which the column is renewed. With the
 * blowers stopped it draws air through their idle wheels. A stack height of 0, the usual one, means
 * no draft: the resistance then stands for both. Left out: wind over the stack, cooling along it.
 *
 * <p>Source: turbulent flow resistance; draft g h (density of air - density of gas), hydrostatics;
 * figures engineering estimate.
 */
final class AirPath implements Machine {
  private static final Burner[] ALL = Burner.values();
  private static final double SHUT_REGISTER = 0.03;
  private static final double RUPTURE_AS_GAS = 1.6;
  private static final double AIR_J_PER_KGK = 287.05;
  private static final double OUTSIDE_K = 305.15;
  private static final double COLUMN_PER_S = 0.1;

  /** How much of the water each register gets, S1 to H3; the nearest to the ducts most. */
  private static final double[] WATER_SHARE = {1.4, 1.2, 1.0, 0.8, 0.6, 1.2, 1.0, 0.8};

  final State boxPa = State.free("air-box.pressure");
  final State draftPa = State.absent("stack.draft");

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
  private final double stackM;

  AirPath(PlantNumbers numbers, Positions ports) {
    this.ports = ports;
    registerScale = numbers.get(PlantNumber.REGISTER_CONDUCTANCE);
    resistanceScale = numbers.get(PlantNumber.GAS_PATH_RESISTANCE);
    capacityKgPerPa = numbers.get(PlantNumber.AIR_BOX_CAPACITY);
    stackM = numbers.get(PlantNumber.STACK_HEIGHT);
    draftPa.decayPerS = COLUMN_PER_S;
  }

  @Override
  public List<State> states() {
    return List.of(boxPa, draftPa);
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
    double drive = boxPa.x + draftPa.x;
    totalKgPerS =
        Math.max(Curve.signedRoot(drive - back, 60) / Math.sqrt(1 / (kt * kt) + resistance), 0);
    double gas = totalKgPerS + rupture;
    furnacePa = resistance * gas * gas - draftPa.x;
    boxPa.dx = (first.airKgPerS + second.airKgPerS - totalKgPerS) / capacityKgPerPa;
    boxPa.decayPerS =
        (first.airSlope() + second.airSlope() + totalKgPerS / (2 * Math.max(drive, 100)))
            / capacityKgPerPa;
    water(first, second);
  }

  /** Second part: the draft, once the gas in the stack is known. */
  void draft(double stackK) {
    draftPa.dx = COLUMN_PER_S * (draftPa(stackM, OUTSIDE_K, stackK) - draftPa.x);
  }

  /**
   * Returns the draft of a column of gas, Pa.
   *
   * @param heightM height of the column
   * @param outsideK air outside, K
   * @param gasK gas in the column, taken as dense as air of its temperature, K
   */
  static double draftPa(double heightM, double outsideK, double gasK) {
    double lighter = 1 / outsideK - 1 / gasK;
    return Physics.GRAVITY_M_PER_S2 * heightM * Physics.ATMOSPHERE_PA / AIR_J_PER_KGK * lighter;
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
