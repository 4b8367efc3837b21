package handwheel.reader;

import handwheel.casualty.Amount;
import handwheel.casualty.Course;
import handwheel.casualty.Fault;
import handwheel.casualty.FaultKind;
import handwheel.plant.Port;
import handwheel.ship.Place;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads faults: what fails, when it sets in, how large it grows, when it goes. */
final class FaultReader {
  private static final String LEAK = FaultKind.LEAK.word();

  /** A thousandth of an inch, m. */
  private static final double SMALLEST_M = 0.0254e-3;

  /** Each fault's mapping by its word, in the order in which they are offered. */
  static final Map<String, Shape> SHAPES = shapes();

  private final Scope scope;

  /** Makes a fault of what its own keys said. */
  @FunctionalInterface
  interface Maker {
    Fault of(String id, Course course);
  }

  FaultReader(Scope scope) {
    this.scope = scope;
  }

  private static Map<String, Shape> shapes() {
    Map<String, Shape> shapes = new LinkedHashMap<>();
    shapes.put(LEAK, leak());
    MachineFault.ALL.forEach(f -> shapes.put(f.kind().word(), f.shape()));
    FittingFaultReader.SHAPES.forEach(shapes::put);
    GaugeFaultReader.SHAPES.forEach(shapes::put);
    return shapes;
  }

  private static Shape leak() {
    return FaultShapes.shape(
        "a leak",
        LEAK,
        List.of(
            Key.must("at", Form.ID, "the place where it breaks"),
            Key.must("hole", Form.AMOUNT, "the bore of the hole")),
        Optional.of(Key.must(FaultShapes.RAMP, Form.AMOUNT, "how long it takes to open")));
  }

  /** Reads one fault by its word. */
  Optional<Fault> read(YamlNode node, Findings findings) {
    Optional<String> word =
        node.at("fault").flatMap(n -> Scalars.word(n, List.copyOf(SHAPES.keySet()), findings));
    return word.flatMap(w -> Optional.ofNullable(SHAPES.get(w)))
        .flatMap(s -> MapNode.of(node, s, findings))
        .flatMap(map -> fault(word.orElseThrow(), map));
  }

  private Optional<Fault> fault(String word, MapNode map) {
    Optional<String> id = map.get("id", FaultReader::id);
    Optional<Maker> maker = maker(word, map);
    Shape shape = Optional.ofNullable(SHAPES.get(word)).orElseThrow();
    Optional<Course> course = FaultShapes.course(map, shape, scope.amounts());
    return All.there(id, maker, course)
        ? Optional.of(maker.orElseThrow().of(id.orElseThrow(), course.orElseThrow()))
        : Optional.empty();
  }

  private Optional<Maker> maker(String word, MapNode map) {
    if (word.equals(LEAK)) {
      return leak(map);
    }
    if (FittingFaultReader.SHAPES.containsKey(word)) {
      return new FittingFaultReader(scope).read(word, map);
    }
    return GaugeFaultReader.SHAPES.containsKey(word)
        ? new GaugeFaultReader(scope).read(word, map)
        : machine(word, map);
  }

  /** A leak's flow is called by the leak's id, so that must not be the plant's own name of one. */
  private static Optional<String> id(YamlNode node, Findings findings) {
    Optional<String> id = Scalars.id(node, findings);
    boolean isTaken =
        id.filter(i -> GaugeReader.quantityIds().contains(ConditionReader.leakFlow(i))).isPresent();
    if (isTaken) {
      findings.add(
          FindingId.RESERVED_ID,
          node.spot(),
          Say.quoted(ConditionReader.leakFlow(id.orElseThrow())) + " is a true value of the plant",
          "Give the leak another id.");
    }
    return isTaken ? Optional.empty() : id;
  }

  private Optional<Maker> leak(MapNode map) {
    Optional<Port> port = map.get("at", this::leakPlace).flatMap(Place::leakPort);
    double widestM = port.map(FaultShapes::widestM).orElse(1.0);
    Optional<Amount> hole = map.get("hole", scope.amounts().length(SMALLEST_M, widestM));
    if (!All.there(port, hole)) {
      return Optional.empty();
    }
    Fault.Aim aim = new Fault.Aim(port.orElseThrow(), hole.orElseThrow(), Fault.Scale.BORE);
    return Optional.of((id, course) -> machine(id, FaultKind.LEAK, List.of(aim), course));
  }

  private static Fault machine(String id, FaultKind kind, List<Fault.Aim> aims, Course course) {
    return new Fault.OfMachine(id, kind, aims, course);
  }

  private Optional<Place> leakPlace(YamlNode node, Findings findings) {
    Optional<Place> place =
        scope.names().one(Named.PLACE).read(node, findings).flatMap(scope.ship()::place);
    if (place.filter(p -> p.leakPort().isEmpty()).isPresent()) {
      List<String> others =
          scope.ship().places().stream()
              .filter(p -> p.leakPort().isPresent())
              .map(Place::id)
              .toList();
      findings.add(
          FindingId.NO_LEAK_PORT,
          node.spot(),
          "nothing can break at " + Say.quoted(place.get().id()) + " in this ship",
          others.isEmpty() ? "" : "Places where something can: " + Say.quoted(others) + ".");
      return Optional.empty();
    }
    return place;
  }

  private Optional<Maker> machine(String word, MapNode map) {
    MachineFault fault =
        MachineFault.ALL.stream()
            .filter(f -> f.kind().word().equals(word))
            .findFirst()
            .orElseThrow();
    return fault
        .aims(map, scope.amounts())
        .map(aims -> (id, course) -> machine(id, fault.kind(), aims, course));
  }
}
