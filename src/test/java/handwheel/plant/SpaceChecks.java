package handwheel.plant;

import static handwheel.plant.OutsideCheck.Tag.COMPUTED;
import static handwheel.plant.OutsideCheck.Tag.FROM_MEMORY;
import static handwheel.plant.OutsideCheck.Tag.READ;

import handwheel.units.Unit;
import java.util.List;
import java.util.stream.Stream;

/** What the fire room does to a body, and the water in its bilge. */
public final class SpaceChecks {
  private static final double HUMID_MOLES = 18.015;
  private static final double AIR_MOLES = 28.965;
  private static final double FRESH_PERCENT = 20.9;

  private SpaceChecks() {}

  /** Returns every check of this kind. */
  public static List<OutsideCheck> all() {
    return Stream.of(dose(), vapour(), asphyxiants(), flooding()).flatMap(s -> s).toList();
  }

  private static Stream<OutsideCheck> dose() {
    double[][] minutes = {
      {80, 16.9}, {100, 7.92}, {120, 4.26}, {140, 2.52}, {160, 1.60}, {180, 1.07}, {200, 0.75}
    };
    return Stream.of(minutes)
        .map(
            m ->
                new OutsideCheck(
                    "minutes to incapacity in dry air of " + (int) m[0] + " C",
                    "ISO 13571:2012 eq. (10), as printed in a library's theory page",
                    m[0] == 100 || m[0] == 200 ? READ : COMPUTED,
                    "fire room: 5e7 min of the dose",
                    m[1],
                    0.01,
                    f -> f * minutesAt(m[0])));
  }

  static double minutesAt(double celsius) {
    Plant plant = Starts.plant("50");
    Rig.put(plant, "space.upper.temperature", Unit.CELSIUS.toSi(celsius));
    Rig.put(plant, "space.upper.vapour-mass-fraction", 0);
    return 1 / Rig.read(plant, Quantity.SPACE_UPPER_DOSE_RATE) / 60;
  }

  private static Stream<OutsideCheck> vapour() {
    double[][] shares = {{46, 0.100}, {60, 0.197}, {70, 0.308}};
    return Stream.of(shares)
        .map(
            s ->
                new OutsideCheck(
                    "vapour in saturated air of " + (int) s[0] + " C, share by volume",
                    "IAPWS R7-97 and the molar masses of water and air",
                    COMPUTED,
                    "fire room: gas constant of steam",
                    s[1],
                    0.01,
                    f -> saturatedShare(s[0], f)));
  }

  /** The mass fraction at which fog begins, as moles; a gas constant too large makes it smaller. */
  private static double saturatedShare(double celsius, double factor) {
    Plant plant = Starts.plant("50");
    Rig.put(plant, "space.upper.temperature", Unit.CELSIUS.toSi(celsius));
    double y = Rig.where(x -> fogKgPerS(plant, x), 1e-9, 0, 0.6) / factor;
    double steam = y / HUMID_MOLES;
    return steam / (steam + (1 - y) / AIR_MOLES);
  }

  private static double fogKgPerS(Plant plant, double massFraction) {
    Rig.put(plant, "space.upper.vapour-mass-fraction", massFraction);
    plant.evaluate();
    return plant.space.upper.fogKgPerS;
  }

  private static Stream<OutsideCheck> asphyxiants() {
    String source = "Purser, SFPE Handbook, in the form of the FDS guide";
    String constant = "gas dose: carbon monoxide";
    double[][] minutes = {{500, 57.9}, {1000, 28.2}, {2000, 13.8}, {5000, 5.3}, {10_000, 2.6}};
    double[][] thin = {{15, 140}, {12, 27.8}, {10, 9.4}};
    Stream<OutsideCheck> known =
        Stream.of(
            new OutsideCheck(
                "dose of 1,000 ppm carbon monoxide in 30 min",
                source,
                READ,
                constant,
                1.063,
                0.001,
                f -> 30 * f * AsphyxiantDose.perMinute(1000, 0, FRESH_PERCENT)),
            new OutsideCheck(
                "breathing with 1 % carbon dioxide, factor",
                source, READ, "gas dose: breathing", 1.2594, 0.0005, f -> f * breathing(1)));
    Stream<OutsideCheck> gas =
        Stream.of(minutes)
            .map(
                m ->
                    new OutsideCheck(
                        "minutes to dose 1 in " + (int) m[0] + " ppm carbon monoxide",
                        source,
                        COMPUTED,
                        constant,
                        m[1],
                        0.02,
                        f -> 1 / f / AsphyxiantDose.perMinute(m[0], 0, FRESH_PERCENT)));
    Stream<OutsideCheck> oxygen =
        Stream.of(thin)
            .map(
                m ->
                    new OutsideCheck(
                        "minutes to dose 1 in " + (int) m[0] + " % oxygen",
                        source,
                        COMPUTED,
                        "gas dose: want of oxygen",
                        m[1],
                        0.01,
                        f -> 1 / f / AsphyxiantDose.perMinute(0, 0, m[0])));
    return Stream.of(known, gas, oxygen).flatMap(s -> s);
  }

  private static double breathing(double dioxidePercent) {
    return AsphyxiantDose.perMinute(1000, dioxidePercent, FRESH_PERCENT)
        / AsphyxiantDose.perMinute(1000, 0, FRESH_PERCENT);
  }

  /** Holes of so many inches under so many feet of water: gpm at a discharge of 1 and of 0.6. */
  private static Stream<OutsideCheck> flooding() {
    double[][] holes = {
      {1, 10, 62.1, 37.3},
      {2, 10, 248.4, 149.0},
      {4, 10, 993.5, 596.1},
      {6, 10, 2235, 1341},
      {6, 20, 3161, 1897},
      {12, 10, 8941, 5365}
    };
    Stream<OutsideCheck> rule =
        Stream.of(holes)
            .map(
                h ->
                    new OutsideCheck(
                        "flooding, " + (int) h[0] + " in hole " + (int) h[1] + " ft down, gpm",
                        "damage control rule 3,600 A root h, exactly a discharge of 1",
                        FROM_MEMORY,
                        "units: gallons a minute",
                        h[2],
                        0.002,
                        f -> holeM3PerS(h[0], h[1]) / Unit.GPM.toSi(f)));
    Stream<OutsideCheck> bilge =
        Stream.of(holes)
            .filter(h -> h[0] >= 4)
            .map(
                h ->
                    new OutsideCheck(
                        "bilge after 1 min, " + (int) h[0] + " in " + (int) h[1] + " ft, m",
                        "orifice law with a discharge of 0.6, over this ship's 75 m2",
                        COMPUTED,
                        PlantNumber.BILGE_AREA.id(),
                        h[3] * 3.785411784e-3 / 75,
                        0.002,
                        f -> bilgeM(0.6 * holeM3PerS(h[0], h[1]), f)));
    return Stream.concat(rule, bilge);
  }

  private static double holeM3PerS(double inches, double feet) {
    double diameterM = Unit.INCH.toSi(inches);
    double headM = Unit.FOOT.toSi(feet);
    double areaM2 = StrictMath.PI / 4 * diameterM * diameterM;
    return areaM2 * StrictMath.sqrt(2 * Physics.GRAVITY_M_PER_S2 * headM);
  }

  private static double bilgeM(double floodingM3PerS, double factor) {
    Plant plant = Rig.with("25", PlantNumber.BILGE_AREA, factor);
    plant.set(Port.FLOODING, floodingM3PerS);
    Run.ticks(plant, 1_200);
    return plant.value(Quantity.BILGE_DEPTH);
  }
}
