package handwheel.scoring;

import handwheel.plant.PlantNumbers;
import handwheel.plant.Port;
import handwheel.plant.Quantity;
import handwheel.plant.Zone;
import handwheel.ship.Control;
import handwheel.ship.ControlKind;
import handwheel.ship.Fitting;
import handwheel.ship.Gauge;
import handwheel.ship.Order;
import handwheel.ship.Place;
import handwheel.ship.PortMove;
import handwheel.ship.Ship;
import handwheel.ship.StandingAct;
import handwheel.ship.Verb;
import handwheel.ship.Watchstander;
import handwheel.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;

/** A small invented ship: one front, one grating, one remote station. */
final class TestShip {
  static final String INSIDE = "front";
  static final String OUTSIDE = "remote-station";

  static final Ship SHIP =
      new Ship(
          "test-ship",
          "Test Ship",
          "00",
          PlantNumbers.usual(),
          List.of(
              place("front", Zone.LOWER),
              place("grating", Zone.UPPER),
              place(OUTSIDE, Zone.OUTSIDE)),
          List.of(),
          fittings(),
          List.of(gauge("burner-line", Unit.PSIG), gauge("level", Unit.INCH)),
          List.of(
              man("supervisor"),
              man("burnerman"),
              man("checkman"),
              man("pumpman"),
              man("remote-hand"),
              man("watch-engineer")),
          List.of(
              new StandingAct(
                  "burnerman",
                  Quantity.DRUM_LEVEL,
                  0.5,
                  4,
                  new Order.Work(
                      "burnerman",
                      Verb.TRIP,
                      List.of("trip"),
                      Optional.empty(),
                      Optional.empty()))),
          List.of());

  private TestShip() {}

  private static List<Fitting> fittings() {
    List<Fitting> all = new ArrayList<>();
    for (String id :
        List.of(
            "main-stop",
            "other-stop",
            "vent",
            "quick-valve",
            "f0",
            "f1",
            "f2",
            "f3",
            "f4",
            "f5",
            "f6",
            "f7",
            "f8")) {
      all.add(fitting(id, Verb.OPEN, 1, Verb.SHUT, 0));
    }
    all.add(fitting("trip", Verb.RESET, 1, Verb.TRIP, 0));
    all.add(fitting("fan", Verb.START, 1, Verb.STOP, 0));
    // A machine whose word for stopped is the last of its choices, not nought.
    all.add(fitting("pump", Verb.START, 0, Verb.STOP, 3));
    return all;
  }

  private static Fitting fitting(String id, Verb open, int openAt, Verb shut, int shutAt) {
    SortedMap<Verb, List<PortMove>> acts = new TreeMap<>();
    acts.put(open, List.of(move(OptionalDouble.of(openAt))));
    acts.put(shut, List.of(move(OptionalDouble.of(shutAt))));
    acts.put(Verb.SET, List.of(move(OptionalDouble.empty())));
    Control local = new Control(INSIDE, ControlKind.HANDWHEEL, 10, 10);
    Control remote = new Control(OUTSIDE, ControlKind.REACH_ROD, 20, 20);
    return new Fitting(id, id, acts, List.of(local, remote));
  }

  private static PortMove move(OptionalDouble to) {
    return new PortMove(Port.MAIN_STOP, to, 0);
  }

  private static Place place(String id, Zone zone) {
    return new Place(id, id, zone, 0, List.of(), Optional.empty());
  }

  private static Gauge gauge(String id, Unit unit) {
    return new Gauge(id, id, Quantity.DRUM_LEVEL, List.of(INSIDE, OUTSIDE), unit, 0, 1000, 0);
  }

  private static Watchstander man(String id) {
    return new Watchstander(id, id, id, INSIDE, List.of());
  }
}
