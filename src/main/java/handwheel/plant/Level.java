package handwheel.plant;

import handwheel.units.Unit;
import handwheel.water.SaturationTable;
import java.util.List;

/**
 * The air and steel of one level of the fire room.
 *
 * <p>States: air K, steam mass fraction, steel around it K, heat dose of a person who stays, soot
 * kg/m3.
 *
 * <p>Assumes well-mixed air at one atmosphere, steam condensing on cold steel and as fog. Dose:
 * convective heat with 8 K for each kPa of vapour above 5.9 kPa, so that ordinary steam-room
 * exposure is borne and saturated air above 60 C is not. No published law holds above a tenth of
 * vapour. Carbon monoxide: {@link FireGases}; radiation: {@link FireRadiation}. Left out: the jet
 * itself, burns by contact.
 *
 * <p>Source: dose (T/C)^3.4/5e7 a minute, value from memory of ISO 13571; vapour term engineering
 * estimate; Lewis relation and Stefan flow for condensation.
 */
final class Level implements Machine {
  private static final double AIR_J_PER_KGK = 287.05;
  private static final double STEAM_J_PER_KGK = 461.5;
  private static final double FREEZES_NEARLY_K = 281;
  private static final double BOILS_K = 373;

  final State airK;
  final State vapour;
  final State wallK;
  final State dose;
  final State sootKgPerM3;

  final double volumeM3;
  double massKg;
  double densityKgPerM3;
  double heatCapacityJPerKgK;
  double condensesKgPerS;
  double fogKgPerS;

  private double gasConstant;
  private double vapourPa;
  private final SaturationTable table;
  private final double wallM2;

  Level(String name, double volumeM3, double wallM2, SaturationTable table) {
    this.volumeM3 = volumeM3;
    this.wallM2 = wallM2;
    this.table = table;
    airK = State.free(name + ".temperature");
    vapour = State.between(name + ".vapour-mass-fraction", 0, 0.995);
    wallK = State.free(name + ".wall.temperature");
    dose = State.free(name + ".dose");
    sootKgPerM3 = State.dying(name + ".soot");
  }

  @Override
  public List<State> states() {
    return List.of(airK, vapour, wallK, dose, sootKgPerM3);
  }

  /** First part: mixture, condensation and dose from this level's states alone. */
  void look() {
    double y = vapour.x;
    gasConstant = AIR_J_PER_KGK * (1 - y) + STEAM_J_PER_KGK * y;
    heatCapacityJPerKgK = 1005 * (1 - y) + 1900 * y;
    densityKgPerM3 = Physics.ATMOSPHERE_PA / (gasConstant * airK.x);
    massKg = densityKgPerM3 * volumeM3;
    vapourPa = Physics.ATMOSPHERE_PA * vapourMoleFraction();
    condensesKgPerS = onWalls();
    fogKgPerS = 0;
    if (airK.x < BOILS_K) {
      double excess = vapourPa - table.pressurePa(Math.max(airK.x, FREEZES_NEARLY_K));
      fogKgPerS = Math.max(excess, 0) / Physics.ATMOSPHERE_PA * massKg * 0.622 / 1.5;
    }
    dose.dx = dosePerS();
  }

  private double onWalls() {
    double atWallPa = table.pressurePa(Math.max(wallK.x, FREEZES_NEARLY_K));
    if (vapourPa <= atWallPa) {
      return 0;
    }
    double ratio =
        (Physics.ATMOSPHERE_PA - atWallPa) / Math.max(Physics.ATMOSPHERE_PA - vapourPa, 200);
    return 0.0075 * wallM2 * StrictMath.log(ratio);
  }

  private double dosePerS() {
    double felt = Unit.CELSIUS.fromSi(airK.x) + 8 * Math.max(vapourPa - 5900, 0) / 1000;
    if (felt <= 50) {
      return 0;
    }
    double root = Curve.fifthRoot(felt);
    return felt * felt * felt * root * root / 3e9 * Curve.smoothStep((felt - 50) / 20);
  }

  double vapourMoleFraction() {
    double y = vapour.x;
    double r = AIR_J_PER_KGK * (1 - y) + STEAM_J_PER_KGK * y;
    return STEAM_J_PER_KGK * y / r;
  }

  /** How far one sees: light-reflecting signs through smoke of 8,700 m2/kg, m. */
  double visibilityM() {
    return Math.min(3 / (8_700 * Math.max(sootKgPerM3.x, 1e-9)), 100);
  }

  /** Soot of this level's air, kg/kg. */
  double sootShare() {
    return sootKgPerM3.x / densityKgPerM3;
  }
}
