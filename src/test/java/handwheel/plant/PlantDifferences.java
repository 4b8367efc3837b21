package handwheel.plant;

import handwheel.units.Unit;
import java.util.List;
import java.util.Locale;

/** Where the plant differs from published figures. */
public final class PlantDifferences {
  private static final double AIR_J_PER_KGK = 1010;

  private PlantDifferences() {}

  /** Returns every difference of this kind. */
  public static List<Difference> all() {
    return List.of(
        new Difference(
            "minutes to incapacity in dry air of 60 C",
            "45.0, ISO 13571:2012 eq. (10) (computed)",
            SpaceChecks.minutesAt(60),
            "the dose fades out from 70 to 50 C so that a warm fire room hurts nobody in a watch"),
        new Difference(
            "stack loss at full power, % of net heat",
            String.format(Locale.ROOT, "%.1f, Siegert's form for oil (from memory)", siegert()),
            stackLoss(),
            "one heat capacity for all furnace gas, right for hot gas and a sixth too large for cold"),
        new Difference(
            "heat for each kilogram of oxygen in an oil fire, MJ",
            "13.1, Huggett (from memory)",
            38 / 3.3,
            "all the oxygen of complete burning is taken, nine tenths of its heat is given"),
        new Difference(
            "upper level above its start after 5 min of 1 MW, K",
            String.format(Locale.ROOT, "%.0f, Foote, Pagni and Alvares (from memory)", layerK()),
            hotterK(),
            "0.7 of the fire's heat goes to the upper air, radiation to its steel is apart"),
        new Difference(
            "shaft power for each kg/s of water a blower throws, kW",
            "14.4 at a tip speed of 120 m/s, momentum of droplets (from memory)",
            kwForThrown(),
            "a scroll filling with water drags far more than spray does; invented, see the flooding"
                + " runs"));
  }

  private static Plant full() {
    Plant plant = Starts.plant("100");
    plant.evaluate();
    return plant;
  }

  private static double stackLoss() {
    Plant p = full();
    double gas = p.saturated.gasKgPerS + p.superheated.gasKgPerS;
    double fuelW = p.fuel.burnersKgPerS * Physics.OIL_HEAT_J_PER_KG;
    return 100 * Physics.GAS_J_PER_KGK * gas * (p.gas.stackK - 298) / fuelW;
  }

  /** (Tg - Ta) (0.68 / (21 - O2) + 0.007), per cent. */
  private static double siegert() {
    Plant p = full();
    double oil = p.fuel.burnersKgPerS * Physics.AIR_FOR_OIL;
    double excess = p.air.totalKgPerS / oil - 1;
    double oxygen = 20.95 * excess / (1 + excess);
    return (p.gas.stackK - 298) * (0.68 / (21 - oxygen) + 0.007);
  }

  private static double hotterK() {
    Plant plant = Starts.plant("50");
    double before = plant.space.upper.airK.x;
    for (int tick = 0; tick < 6_000; tick++) {
      plant.fire.heatW.x = 1e6;
      Run.ticks(plant, 1);
    }
    return plant.space.upper.airK.x - before;
  }

  /** Forced ventilation: 0.63 (Q / (m c T0))^0.72 (h A / (m c))^-0.36, h 30 W/(m2 K). */
  private static double layerK() {
    Plant plant = Starts.plant("50");
    plant.evaluate();
    double t0 = plant.space.upper.airK.x;
    double flow = 8 * plant.space.upper.densityKgPerM3 * AIR_J_PER_KGK;
    double walls = 30 * PlantNumber.SPACE_WALL_AREA.usual();
    return t0
        * 0.63
        * StrictMath.pow(1e6 / (flow * t0), 0.72)
        * StrictMath.pow(walls / flow, -0.36);
  }

  /** Rated shaft power from 42 inWG and 8.8 kg/s at 1.15 kg/m3 and 70 per cent. */
  private static double kwForThrown() {
    double ratedKw = Unit.INCH_WATER.toSi(42) * 8.8 / 1.15 / 0.7 / 1000;
    Plant dry = Starts.plant("100");
    Plant wet = Rig.put(Starts.plant("100"), "blower.1.water.mass", 1);
    dry.evaluate();
    wet.evaluate();
    double n = dry.blower1.speed.x;
    double dragged = (dry.blower1.speed.dx - wet.blower1.speed.dx) * 6;
    double lessAir = n * 0.60 * (dry.blower1.airKgPerS - wet.blower1.airKgPerS) / 8.8;
    return (dragged + lessAir) * n * ratedKw / wet.blower1.waterToBoxKgPerS;
  }
}
