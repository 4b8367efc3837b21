package handwheel.plant;

import static handwheel.plant.OutsideCheck.Tag.COMPUTED;
import static handwheel.plant.OutsideCheck.Tag.FROM_MEMORY;
import static handwheel.plant.OutsideCheck.Tag.READ;

import handwheel.units.Unit;
import handwheel.water.SaturationTable;
import java.util.List;
import java.util.stream.Stream;

/** Raising steam, safety valves, chloride, stack loss. */
public final class BoilerChecks {
  private static final SaturationTable TABLE = SaturationTable.standard();

  /** Milligrams of chloride in a litre for each equivalent per million. */
  private static final double PPM_PER_EPM = 35.45;

  private BoilerChecks() {}

  /** Returns every check of this kind. */
  public static List<OutsideCheck> all() {
    return Stream.of(ramp(), valves(), chloride(), heat()).flatMap(s -> s).toList();
  }

  /** Pressure so many hours after 212 F when the saturation temperature rises 100 F/h. */
  private static Stream<OutsideCheck> ramp() {
    double[][] hours = {
      {0.5, 22.0},
      {1, 65.3},
      {1.25, 98.7},
      {1.5, 142.2},
      {1.75, 198.0},
      {2, 268.1},
      {2.25, 355.1},
      {2.5, 461.3},
      {2.75, 589.5},
      {2.769, 600.0}
    };
    return Stream.of(hours)
        .map(
            h ->
                new OutsideCheck(
                    "pressure " + h[0] + " h after 212 F at 100 F/h, psig",
                    "IAPWS R7-97",
                    COMPUTED,
                    "steam table: saturation pressure",
                    h[1],
                    0.003,
                    f -> psigAt(212 + 100 * h[0], f)));
  }

  private static double psigAt(double fahrenheit, double factor) {
    double pa = factor * TABLE.pressurePa(Unit.FAHRENHEIT.toSi(fahrenheit));
    return Unit.PSIG.fromSi(pa - Physics.ATMOSPHERE_PA);
  }

  /** The area a valve of 55,000 lb/h at 600 psig has, at other pressures. */
  private static Stream<OutsideCheck> valves() {
    return Stream.of(300, 500, 660, 670)
        .map(
            psig ->
                new OutsideCheck(
                    "drum safety valve of 55,000 lb/h at 600 psig, at " + psig + " psig, lb/h",
                    "51.5 A P Kd (ASME, API 520): choked flow goes with absolute pressure",
                    READ,
                    PlantNumber.SAFETY_DRUM_1_FLOW.id(),
                    51.5 * 0.975 * areaIn2() * (psig + 14.696),
                    0.02,
                    f -> valveLbPerH(psig, f)));
  }

  private static double areaIn2() {
    return 55_000 / (51.5 * 0.975 * 614.696);
  }

  private static double valveLbPerH(double psig, double factor) {
    double pa = Unit.PSIG.toSi(psig) + Physics.ATMOSPHERE_PA;
    Plant plant = Rig.with("100", PlantNumber.SAFETY_DRUM_1_FLOW, factor);
    Rig.put(plant, "drum.temperature", Rig.where(TABLE::pressurePa, pa, 400, 560));
    Rig.put(plant, "safety.drum-1.lifted", 1);
    return Unit.LB_PER_H.fromSi(Rig.read(plant, Quantity.SAFETY_FLOW));
  }

  private static Stream<OutsideCheck> chloride() {
    double[][] leaks = {{10, 0.0546}, {100, 0.546}};
    Stream<OutsideCheck> feed =
        Stream.of(leaks)
            .map(
                l ->
                    new OutsideCheck(
                        (int) l[0] + " lb/h of sea water in 100,000 lb/h of feed, epm it brings",
                        "sea water of 35 g/kg: 19,350 ppm, 546 epm of chloride",
                        FROM_MEMORY,
                        "drum: chloride with the feed",
                        l[1],
                        0.01,
                        f -> f * broughtEpm(19_350e-6 * l[0] / 100_000)));
    Stream<OutsideCheck> blown =
        Stream.of(
            new OutsideCheck(
                "boiler over feed chloride when it no longer rises, surface blow open",
                "feed chloride over the blown share of the feed",
                COMPUTED,
                "drum: surface blow",
                13.7502 / 0.6,
                0.02,
                f -> concentrated() / f));
    return Stream.concat(feed, blown);
  }

  /** Chloride a kilogram of feed brings to a boiler that carries none over yet, epm. */
  private static double broughtEpm(double feedFraction) {
    Plant plant = Rig.put(Starts.plant("100"), "drum.chloride-mass", 0);
    plant.set(Port.FEED_CHLORIDE, feedFraction);
    plant.evaluate();
    return plant.drum.chlorideKg.dx / plant.feed.flowKgPerS * 1e6 / PPM_PER_EPM;
  }

  private static double concentrated() {
    Plant plant = Starts.plant("100");
    double feed = 1e-6;
    plant.set(Port.FEED_CHLORIDE, feed);
    plant.set(Port.SURFACE_BLOW, 1);
    double kg = Rig.where(x -> -risesKgPerS(plant, x), 0, 0, 10);
    Rig.put(plant, "drum.chloride-mass", kg);
    return Rig.read(plant, Quantity.DRUM_CHLORIDE) / feed;
  }

  private static double risesKgPerS(Plant plant, double chlorideKg) {
    Rig.put(plant, "drum.chloride-mass", chlorideKg);
    plant.evaluate();
    return plant.drum.chlorideKg.dx;
  }

  private static Stream<OutsideCheck> heat() {
    return Stream.of(
        new OutsideCheck(
            "cold boiler warmed by a hot furnace, K/s for each MW",
            "heat capacity of water 4.18 (IAPWS R7-97) and of steel 0.50 kJ/(kg K)",
            COMPUTED,
            PlantNumber.DRUM_STEEL.id(),
            warmingExpected(),
            0.01,
            BoilerChecks::warming));
  }

  private static Plant warmed(double factor) {
    Plant plant = Rig.with("boiler-cold", PlantNumber.DRUM_STEEL, factor);
    Rig.put(plant, "furnace.saturated.gas.temperature", 1_200);
    plant.evaluate();
    return plant;
  }

  private static double warmingExpected() {
    double water = warmed(1).drum.waterKg() * 4_180;
    return 1e6 / (water + 26_000 * 500);
  }

  private static double warming(double factor) {
    Plant plant = warmed(factor);
    return plant.drum.saturationTemperatureK.dx * 1e6 / plant.gas.evaporationW;
  }
}
