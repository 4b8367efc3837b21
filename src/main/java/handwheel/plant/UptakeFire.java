package handwheel.plant;

/**
 * Soot burning in the uptake, fed by the air that the furnaces left unused. No state.
 *
 * <p>Input: soot that would burn with air enough, kg/s. Outputs: soot burned kg/s, its heat W.
 *
 * <p>Assumes that soot is carbon and burns as far as unused air reaches it: with the blowers
 * stopped and the registers shut it goes out. Left out: how much soot there is, heat into the
 * uptake's plates, the economizer's tubes.
 *
 * <p>Source: heat of combustion of carbon 32.8 MJ/kg and 11.5 kg of air a kilogram (value from
 * memory); the rest engineering estimate.
 */
final class UptakeFire {
  private static final double HEAT_J_PER_KG = 32.8e6;
  private static final double AIR_FOR_SOOT = 11.5;

  double burnsKgPerS;
  double heatW;

  private final Positions ports;

  UptakeFire(Positions ports) {
    this.ports = ports;
  }

  void evaluate(Furnace saturated, Furnace superheater) {
    double unused =
        saturated.gasKgPerS * saturated.unusedAir.x
            + superheater.gasKgPerS * superheater.unusedAir.x;
    burnsKgPerS = Math.min(ports.at(Port.UPTAKE_FIRE), unused / AIR_FOR_SOOT);
    heatW = burnsKgPerS * HEAT_J_PER_KG;
  }
}
