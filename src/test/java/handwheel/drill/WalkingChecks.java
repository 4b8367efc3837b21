package handwheel.drill;

import static handwheel.plant.OutsideCheck.Tag.FROM_MEMORY;
import static handwheel.plant.OutsideCheck.Tag.READ;

import handwheel.plant.OutsideCheck;
import handwheel.plant.Zone;
import handwheel.reader.ShippedFiles;
import handwheel.ship.Control;
import handwheel.ship.Place;
import handwheel.ship.Ship;
import handwheel.ship.Way;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** How fast the crew walk, climb and turn. */
final class WalkingChecks {
  private static final String IMO = "IMO MSC.1/Circ.1533 annex 3, male crew, mean of the range";
  private static final int CREW = 20_000;

  private WalkingChecks() {}

  static List<OutsideCheck> all() {
    return List.of(
        mean("mean walk of 20,000 drawn crew, flat, m/s", 1.48, Pace::flatMPerS),
        mean("mean walk of 20,000 drawn crew, stairs down, m/s", 1.01, Pace::downMPerS),
        mean("mean walk of 20,000 drawn crew, stairs up, m/s", 0.67, Pace::upMPerS),
        new OutsideCheck(
            "40 m of corridor at 1 m/s, s",
            "IMO MSC.1/Circ.1533, verification test 1",
            READ,
            "crew: speed on the flat",
            40,
            0.002,
            WalkingChecks::corridorS),
        new OutsideCheck(
            "main stop by hand, turns a minute",
            "30 a minute, assumed for the turns of AWWA gate valves",
            FROM_MEMORY,
            "ship: time of the main stop",
            30,
            0.02,
            f -> turnsPerMin() / f));
  }

  private static OutsideCheck mean(String name, double published, ToDoubleFunction<Pace> speed) {
    return new OutsideCheck(
        name, IMO, READ, "crew: range of speeds", published, 0.01, f -> f * drawnMean(speed));
  }

  private static double drawnMean(ToDoubleFunction<Pace> speed) {
    double sum = 0;
    for (int seed = 0; seed < CREW; seed++) {
      sum += speed.applyAsDouble(Pace.drawn(new SplitMix64(seed)));
    }
    return sum / CREW;
  }

  private static double corridorS(double factor) {
    Place from = place("from");
    Place to = place("to");
    Way way = new Way("from", "to", 40, 0);
    Pace pace = new Pace(factor, 1, 1, 1, 0);
    Roads.Leg leg = new Roads.Leg(to, way, false);
    Legs legs = new Legs(from, pace);
    legs.setOut(new Roads.Route(List.of(leg), pace.seconds(leg)));
    int ticks = 1;
    while (!legs.tick()) {
      ticks++;
    }
    return (double) ticks / Engine.TICKS_PER_S;
  }

  private static Place place(String id) {
    return new Place(id, id, Zone.LOWER, 0, List.of(), Optional.empty());
  }

  static Control control(String fitting, String at) {
    Ship ship = ShippedFiles.ship().value().orElseThrow();
    return ship.fitting(fitting).orElseThrow().controls().stream()
        .filter(c -> c.place().equals(at))
        .findFirst()
        .orElseThrow();
  }

  private static double turnsPerMin() {
    Control control = control("main-stop", "stop-grating");
    return control.turns() * 60 / control.timeS();
  }
}
