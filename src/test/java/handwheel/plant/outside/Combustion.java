package handwheel.plant.outside;

/** Published figures of burning oil. */
final class Combustion {
  /** Carbon, hydrogen and sulphur of a naval distillate, typical mass fractions from memory. */
  private static final double CARBON = 0.868;

  private static final double HYDROGEN = 0.128;
  private static final double SULPHUR = 0.004;
  private static final double AIR_KG_PER_MOL = 0.028965;

  private Combustion() {}

  /** Air a kilogram of oil needs: 11.51 C + 34.28 (H - O/8) + 4.31 S; formula from memory. */
  static double airForOil(double carbon, double hydrogen, double oxygen, double sulphur) {
    return 11.51 * carbon + 34.28 * (hydrogen - oxygen / 8) + 4.31 * sulphur;
  }

  static double airForDistillate() {
    return airForOil(CARBON, HYDROGEN, 0, SULPHUR);
  }

  /**
   * The same from counting atoms: a mole of oxygen burns a mole of carbon, two of hydrogen
   * molecules or one of sulphur; air is 20.95 per cent oxygen.
   */
  static double airForDistillateByMoles() {
    double oxygen = CARBON / 0.012011 + HYDROGEN / 1.008e-3 / 4 + SULPHUR / 0.03206;
    return oxygen / 0.2095 * AIR_KG_PER_MOL;
  }

  /**
   * Net heat of a distillate by the correlation of ASTM D4868 and ISO 8217, MJ/kg; from memory.
   *
   * @param density at 15 C, kg/m3
   * @param sulphur mass fraction
   */
  static double netHeat(double density, double sulphur) {
    double pure = 46.423 - 8.792e-6 * density * density + 3.170e-3 * density;
    return pure * (1 - sulphur) + 9.420 * sulphur;
  }

  /** Oxygen in the dry gas, per cent, from EA = O2 / (20.95 - O2); from memory, near enough. */
  static double oxygenPercent(double excessAir) {
    return 20.95 * excessAir / (1 + excessAir);
  }

  /** Siegert's stack loss of an oil fire, per cent of the net heat; from memory. */
  static double stackLossPercent(double stackC, double airC, double oxygenPercent) {
    return (stackC - airC) * (0.68 / (21 - oxygenPercent) + 0.007);
  }
}
