package handwheel.plant;

import static handwheel.plant.OutsideCheck.Tag.COMPUTED;
import static handwheel.plant.OutsideCheck.Tag.FROM_MEMORY;
import static handwheel.plant.OutsideCheck.Tag.READ;

import handwheel.units.Unit;
import java.util.List;
import java.util.stream.Stream;

/** Oil, its burning in the furnace and on the deck, smoke. */
public final class FireChecks {
  private static final String NUREG = "NUREG-1805, spreadsheet 04 (diesel: 0.045, 44,400, 2.1)";
  private static final double SIXTEENTH_INCH_M2 = StrictMath.PI / 4 * 0.0254 * 0.0254 / 256;

  private FireChecks() {}

  /** Returns every check of this kind. */
  public static List<OutsideCheck> all() {
    return Stream.of(oil(), sprayer(), fan(), pool()).flatMap(s -> s).toList();
  }

  private static Stream<OutsideCheck> oil() {
    return Stream.of(
        new OutsideCheck(
            "air for a kilogram of naval distillate, kg",
            "molar balance of C 0.868, H 0.128, S 0.004",
            COMPUTED,
            "furnace: air for oil",
            14.40,
            0.01,
            f -> f * stoichiometricAir()),
        new OutsideCheck(
            "net heat of distillate oil, MJ/kg",
            "form of ISO 8217 and ASTM D4868, density 845, sulphur 0.4 %",
            FROM_MEMORY,
            "furnace: heat of oil",
            42.69,
            0.005,
            f -> f * heatOfOil()),
        new OutsideCheck(
            "oxygen for a kilogram of oil, kg",
            "molar balance of C 0.868, H 0.128, S 0.004",
            COMPUTED,
            "fire room: oxygen of the fire",
            0.868 * 31.998 / 12.011 + 0.128 * 31.998 / 4.032 + 0.004 * 31.998 / 32.06,
            0.02,
            f -> f * oxygenForOil()),
        new OutsideCheck(
            "oil jet through 1/16 in at 300 psi, kg/s",
            "Bernoulli, 850 kg/m3: 0.0704 at a discharge of 0.6, here of 0.8",
            COMPUTED,
            "fuel system: spray discharge",
            0.0704 * 0.8 / 0.6,
            0.01,
            f -> f * jetKgPerS()));
  }

  private static double stoichiometricAir() {
    Plant plant = Starts.plant("100");
    plant.evaluate();
    double ratio = plant.front.airRatio(Burner.S1);
    return plant.air.burnerKgPerS(Burner.S1) / ratio / plant.front.combustibleKgPerS(Burner.S1);
  }

  private static double heatOfOil() {
    Plant plant = Starts.plant("100");
    Rig.put(plant, "furnace.saturated.vapour.mass", 0);
    plant.evaluate();
    double burned = plant.front.fire(Side.SATURATED).burnedKgPerS;
    return plant.saturated.releasedW / burned / 1e6;
  }

  private static double oxygenForOil() {
    Plant calm = Starts.plant("50");
    calm.evaluate();
    Plant burning = Rig.put(Starts.plant("50"), "fire.heat", 1e6);
    burning.evaluate();
    double lessPerS = calm.space.oxygen.dx - burning.space.oxygen.dx;
    return lessPerS * burning.space.upper.massKg / burning.fire.burnsKgPerS();
  }

  private static double jetKgPerS() {
    Plant plant = Starts.plant("100");
    Rig.put(plant, "fuel.header.pressure", Unit.PSIG.toSi(300));
    plant.set(Port.OIL_SPRAY, SIXTEENTH_INCH_M2);
    return Rig.read(plant, Quantity.OIL_SPRAY_FLOW);
  }

  /** Flow of a straight mechanical sprayer goes with the root of the oil's pressure. */
  private static Stream<OutsideCheck> sprayer() {
    double[][] shares = {
      {100, 0.577}, {125, 0.645}, {150, 0.707}, {200, 0.816}, {250, 0.913}, {300, 1}, {350, 1.080}
    };
    return Stream.of(shares)
        .map(
            s ->
                new OutsideCheck(
                    "sprayer plate No. 4 at " + (int) s[0] + " psi, share of its 300 psi flow",
                    "orifice law, marine practice",
                    FROM_MEMORY,
                    PlantNumber.PLATE_4_FLOW.id(),
                    s[1],
                    0.01,
                    f -> sprayerShare(s[0], f)));
  }

  private static double sprayerShare(double psi, double factor) {
    Plant plant = Rig.with("100", PlantNumber.PLATE_4_FLOW, factor);
    Rig.put(plant, "fuel.header.pressure", Unit.PSIG.toSi(psi));
    return Rig.read(plant, Quantity.BURNER_S1_FUEL_FLOW) / PlantNumber.PLATE_4_FLOW.usual();
  }

  /** At a fixed opening, pressure with the square of the speed. */
  private static Stream<OutsideCheck> fan() {
    String laws = "fan laws: flow with the speed, power with its cube";
    return Stream.of(
        new OutsideCheck(
            "blower at 0.8 of its speed, share of its air",
            laws,
            FROM_MEMORY,
            "blower: air at a speed",
            0.8,
            0.01,
            f -> f * airKgPerS(0.8) / airKgPerS(1)),
        new OutsideCheck(
            "blower at 0.8 of its speed, share of its power",
            laws,
            FROM_MEMORY,
            "blower: load at a speed",
            0.512,
            0.01,
            f -> f * shaftPower(0.8) / shaftPower(1)));
  }

  private static Plant blowing(double speed) {
    Plant plant = Rig.put(Starts.plant("100"), "blower.1.speed", speed);
    Rig.put(plant, "air-box.pressure", speed * speed * Unit.INCH_WATER.toSi(42));
    plant.set(Port.BLOWER_1_STOP, 0);
    plant.evaluate();
    return plant;
  }

  private static double airKgPerS(double speed) {
    return blowing(speed).blower1.airKgPerS;
  }

  /** How a blower without steam slows down, times its speed. */
  private static double shaftPower(double speed) {
    return -blowing(speed).blower1.speed.dx * speed;
  }

  private static Stream<OutsideCheck> pool() {
    return Stream.of(
        new OutsideCheck(
            "the published example itself: 2,545 ft2 of diesel, kW",
            NUREG,
            READ,
            "burning rate in the formula",
            472_403.6,
            1e-6,
            f -> poolKw(f * 0.045, 2_545 * 0.3048 * 0.3048)),
        new OutsideCheck(
            "burning rate of a pool, kg/(m2 s)",
            NUREG,
            READ,
            "oil fire: burning rate",
            0.045,
            0.02,
            f -> f * burningRate()),
        new OutsideCheck(
            "heat of 4 m2 of burning oil, kW; the rest of 15 % is unburned",
            NUREG,
            COMPUTED,
            "oil fire: heat of what burns",
            poolKw(0.045, 4),
            0.15,
            f -> f * poolHeatKw()),
        new OutsideCheck(
            "sight of reflecting signs in 1 g/m3 of soot, m",
            "3 over extinction (Jin), 8.7 m2/g (Mulholland and Croarkin)",
            FROM_MEMORY,
            "fire room: extinction of soot",
            3 / 8.7,
            0.02,
            f -> sightM() / f));
  }

  /** Heat of a burning pool: burning rate, diesel's heat, area, and its diameter's effect. */
  static double poolKw(double rateKgPerM2S, double areaM2) {
    double diameterM = StrictMath.sqrt(4 * areaM2 / StrictMath.PI);
    return rateKgPerM2S * 44_400 * (1 - StrictMath.exp(-2.1 * diameterM)) * areaM2;
  }

  private static Plant burning() {
    Plant plant = Rig.put(Starts.plant("50"), "fire.oil.mass", 8);
    Rig.put(plant, "fire.burning", 1);
    plant.evaluate();
    return plant;
  }

  private static double burningRate() {
    return -burning().fire.deckOilKg.dx / 4;
  }

  /** Where the heat, from nothing, is going with its time constant of 12 s. */
  private static double poolHeatKw() {
    return burning().fire.heatW.dx * 12 / 1000;
  }

  private static double sightM() {
    return Rig.read(
        Rig.put(Starts.plant("50"), "space.upper.soot", 1e-3), Quantity.SPACE_UPPER_VISIBILITY);
  }
}
