package handwheel.plant;

import java.util.List;

/**
 * What an oil fire puts into the air people breathe, and what it does to them.
 *
 * <p>States, none of which a condition must name: carbon monoxide of both levels kg/m3, asphyxiant
 * dose of a person who stays on either. Inputs: flows between the levels, oxygen, soot, oil
 * burning. Outputs: mole fractions of carbon monoxide, carbon dioxide and oxygen.
 *
 * <p>Assumes that carbon monoxide goes the ways of the soot (eight parts of nine into the upper
 * level), that carbon dioxide keeps its ratio to soot, that the plume's equivalence ratio is the
 * share of oxygen the upper level has lost. The asphyxiant dose stands beside the heat dose and is
 * not added to it: whichever reaches its limit first decides. Left out: irritant gases and cyanide,
 * no published yield for this oil; furnace gas: the air box of the double casing stands above the
 * furnace unless a tube bursts, whose steam puts the flames out; gas that lies along the floor.
 *
 * <p>Source: dose {@link AsphyxiantDose}; yields 0.012 and 2.83 kg/kg for a kerosene-like oil and
 * the rise of the first short of air, 1 + 10 exp(-2.5 ratio^-2.8), A. Tewarson in the SFPE Handbook
 * of Fire Protection Engineering (values from memory); lower level's oxygen engineering estimate.
 */
final class FireGases implements Machine {
  private static final double MONOXIDE_J_PER_KGK = 296.84;
  private static final double DIOXIDE_J_PER_KGK = 188.92;
  private static final double OXYGEN_J_PER_KGK = 259.84;
  private static final double MONOXIDE_YIELD = 0.012;
  private static final double DIOXIDE_YIELD = 2.83;
  private static final double SOOT_YIELD = 0.018;
  private static final double OXYGEN_NEED = 3.3;
  private static final double TO_UPPER = 8.0 / 9;

  final State upperMonoxideKgPerM3 = State.absent("space.upper.carbon-monoxide");
  final State lowerMonoxideKgPerM3 = State.absent("space.lower.carbon-monoxide");
  final State upperDose = State.absent("space.upper.gas-dose");
  final State lowerDose = State.absent("space.lower.gas-dose");

  double lowerOxygen;
  double upperMonoxide;
  double lowerMonoxide;
  double upperDioxide;
  double lowerDioxide;

  @Override
  public List<State> states() {
    return List.of(upperMonoxideKgPerM3, lowerMonoxideKgPerM3, upperDose, lowerDose);
  }

  void evaluate(FireRoom room, double burnsKgPerS) {
    Level upper = room.upper;
    Level lower = room.lower;
    double above = upperMonoxideKgPerM3.x / upper.densityKgPerM3;
    double below = lowerMonoxideKgPerM3.x / lower.densityKgPerM3;
    double made = burnsKgPerS > 0 ? burnsKgPerS * monoxideYield(room.oxygenLost()) : 0;
    upperMonoxideKgPerM3.dx =
        (TO_UPPER * made - room.upperFreshKgPerS() * above + room.risesKgPerS() * (below - above))
            / upper.volumeM3;
    lowerMonoxideKgPerM3.dx =
        ((1 - TO_UPPER) * made
                - room.lowerFreshKgPerS() * below
                + room.sinksKgPerS() * (above - below))
            / lower.volumeM3;
    lowerOxygen = lowerOxygen(lower);
    upperMonoxide = monoxide(upper, upperMonoxideKgPerM3.x);
    lowerMonoxide = monoxide(lower, lowerMonoxideKgPerM3.x);
    upperDioxide = dioxide(upper);
    lowerDioxide = dioxide(lower);
    upperDose.dx = dosePerS(upperMonoxide, upperDioxide, oxygen(upper, room.oxygen.x));
    lowerDose.dx = dosePerS(lowerMonoxide, lowerDioxide, oxygen(lower, lowerOxygen));
  }

  /** Oxygen by mass: fresh air, less what its steam displaces and what its soot stands for. */
  private static double lowerOxygen(Level lower) {
    double dry = (1 - lower.vapour.x) / (1 - FireRoom.SUPPLY_VAPOUR);
    double used = OXYGEN_NEED * lower.sootShare() / SOOT_YIELD;
    return Math.max(FireRoom.FRESH_OXYGEN * dry - used, 0);
  }

  private static double dosePerS(double monoxide, double dioxide, double oxygen) {
    return AsphyxiantDose.perMinute(1e6 * monoxide, 100 * dioxide, 100 * oxygen) / 60;
  }

  /** Carbon monoxide a kilogram of oil gives, kg, by the plume's fuel-to-air equivalence ratio. */
  static double monoxideYield(double equivalenceRatio) {
    double ratio = Math.max(equivalenceRatio, 1e-3);
    double power = ratio * ratio * ratio / Curve.fifthRoot(ratio);
    return MONOXIDE_YIELD * (1 + 10 * Decay.of(2.5 / power));
  }

  private static double monoxide(Level level, double kgPerM3) {
    return kgPerM3 * MONOXIDE_J_PER_KGK * level.airK.x / Physics.ATMOSPHERE_PA;
  }

  private static double dioxide(Level level) {
    double kgPerM3 = level.sootKgPerM3.x * DIOXIDE_YIELD / SOOT_YIELD;
    return kgPerM3 * DIOXIDE_J_PER_KGK * level.airK.x / Physics.ATMOSPHERE_PA;
  }

  private static double oxygen(Level level, double massFraction) {
    return massFraction
        * level.densityKgPerM3
        * OXYGEN_J_PER_KGK
        * level.airK.x
        / Physics.ATMOSPHERE_PA;
  }
}
