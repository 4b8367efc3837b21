package handwheel.reader;

import handwheel.casualty.Fault;
import handwheel.plant.Port;
import handwheel.ship.Control;
import handwheel.ship.Fitting;
import handwheel.ship.PortMove;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads what is wrong with a fitting, or with the gear that works it from one place. */
final class FittingFaultReader {
  private static final String STUCK = "fitting-stuck";
  private static final String STIFF = "fitting-stiff";
  private static final String DEAD = "machine-dead";
  private static final String GEAR = "gear-failed";
  private static final double MOST_TIMES = 100;

  static final Map<String, Shape> SHAPES = shapes();

  private final Scope scope;

  FittingFaultReader(Scope scope) {
    this.scope = scope;
  }

  private static Map<String, Shape> shapes() {
    Map<String, Shape> shapes = new LinkedHashMap<>();
    put(
        shapes,
        "a stuck fitting",
        STUCK,
        Key.may("at", Form.POSITION, "where it jams on its way; without it, where it stands"));
    put(
        shapes,
        "a stiff fitting",
        STIFF,
        Key.must("times", Form.NUMBER, "how many times longer it takes"));
    put(shapes, "a dead machine", DEAD);
    put(shapes, "failed gear", GEAR, Key.must("at", Form.ID, "the place it is worked from"));
    return shapes;
  }

  private static void put(Map<String, Shape> shapes, String what, String word, Key... more) {
    List<Key> own = new ArrayList<>();
    own.add(Key.must("fitting", Form.ID, "the fitting"));
    own.addAll(List.of(more));
    shapes.put(word, FaultShapes.shape(what, word, own, Optional.empty()));
  }

  Optional<FaultReader.Maker> read(String word, MapNode map) {
    return switch (word) {
      case STUCK -> stuck(map);
      case STIFF -> stiff(map);
      case DEAD -> dead(map);
      default -> gear(map);
    };
  }

  private Optional<Fitting> fitting(MapNode map) {
    return map.get("fitting", scope.names().one(Named.FITTING)).flatMap(scope.ship()::fitting);
  }

  private static FaultReader.Maker maker(
      Fitting fitting, Fault.FittingTrouble trouble, OptionalDouble figure) {
    return (id, course) -> new Fault.OfFitting(id, fitting.id(), trouble, figure, course);
  }

  private Optional<FaultReader.Maker> stuck(MapNode map) {
    Optional<Fitting> fitting = fitting(map);
    Optional<Port> port =
        fitting.flatMap(
            f -> f.acts().values().stream().flatMap(List::stream).findFirst().map(PortMove::port));
    Optional<Double> at =
        map.get(
            "at",
            (n, r) -> port.flatMap(p -> PortReader.position(n, p, r).stream().boxed().findFirst()));
    boolean isLost = map.has("at") && at.isEmpty();
    OptionalDouble figure = at.map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
    return isLost
        ? Optional.empty()
        : fitting.map(f -> maker(f, Fault.FittingTrouble.STUCK, figure));
  }

  private Optional<FaultReader.Maker> stiff(MapNode map) {
    Optional<Fitting> fitting = fitting(map);
    Optional<Double> times = map.get("times", Measures.si(Wanted.NUMBER, 1, MOST_TIMES));
    return fitting.flatMap(
        f -> times.map(t -> maker(f, Fault.FittingTrouble.STIFF, OptionalDouble.of(t))));
  }

  private Optional<FaultReader.Maker> dead(MapNode map) {
    Optional<Fitting> fitting = fitting(map);
    if (fitting.filter(f -> f.stopMoves().isEmpty()).isPresent()) {
      List<String> machines =
          scope.ship().fittings().stream()
              .filter(f -> !f.stopMoves().isEmpty())
              .map(Fitting::id)
              .toList();
      add(
          map,
          "fitting",
          Say.quoted(fitting.get().id()) + " is nothing that starts and stops",
          machines.isEmpty() ? "" : "What does: " + Say.quoted(machines) + ".");
      return Optional.empty();
    }
    return fitting.map(f -> maker(f, Fault.FittingTrouble.DEAD, OptionalDouble.empty()));
  }

  private Optional<FaultReader.Maker> gear(MapNode map) {
    Optional<Fitting> fitting = fitting(map);
    Optional<String> at = map.get("at", scope.names().one(Named.PLACE));
    if (!All.there(fitting, at)) {
      return Optional.empty();
    }
    String place = at.orElseThrow();
    Fitting worked = fitting.orElseThrow();
    if (worked.controlAt(place).isEmpty()) {
      List<String> places = worked.controls().stream().map(Control::place).toList();
      add(
          map,
          "at",
          Say.quoted(worked.id()) + " is not worked from " + Say.quoted(place),
          "It is worked from " + Say.quoted(places) + ".");
      return Optional.empty();
    }
    return Optional.of((id, course) -> new Fault.OfGear(id, worked.id(), place, course));
  }

  private static void add(MapNode map, String key, String message, String mend) {
    map.findings()
        .add(
            FindingId.NO_SUCH_MOVE,
            map.node(key).map(YamlNode::spot).orElse(map.spot()),
            message,
            mend);
  }
}
