package handwheel.reader;

import handwheel.casualty.Step;
import handwheel.casualty.StepTest;
import handwheel.plant.Port;
import handwheel.ship.Fitting;
import handwheel.ship.Gauge;
import handwheel.ship.Order;
import handwheel.ship.Place;
import handwheel.ship.Ship;
import handwheel.ship.Verb;
import java.util.List;
import java.util.Optional;

/** Reads what shows that a step was done. */
final class StepTestReader {
  private static final List<String> OPEN = List.of("open", "running");
  private static final List<Verb> OPENING = List.of(Verb.OPEN, Verb.START, Verb.RESET, Verb.LIGHT);
  private static final List<Verb> SHUTTING = List.of(Verb.SHUT, Verb.STOP, Verb.TRIP, Verb.SECURE);

  /** The states a fitting can be brought to. */
  static final List<String> STATES = List.of("open", "running", "shut", "stopped");

  private final Scope scope;

  StepTestReader(Scope scope) {
    this.scope = scope;
  }

  /** Reads the test of a kind of step. */
  Optional<StepTest> read(String kind, MapNode map, Optional<Step.Side> place) {
    return switch (kind) {
      case "order" ->
          map.get("order", new OrderNode(scope.orders()))
              .map(Order::text)
              .map(StepTest.Ordered::new);
      case "fitting" -> fittingIs(map, place);
      case "read" -> readProof(map);
      case "report" -> reported(map);
      default -> map.word("muster").map(w -> new StepTest.Mustered());
    };
  }

  private Optional<StepTest> fittingIs(MapNode map, Optional<Step.Side> place) {
    Optional<List<String>> fittings =
        map.get("fitting", Scalars.ids(scope.names().one(Named.FITTING)));
    Optional<String> is = map.word("is");
    boolean isOpen = is.filter(OPEN::contains).isPresent();
    for (String id : fittings.orElse(List.of())) {
      scope
          .ship()
          .fitting(id)
          .ifPresent(
              f -> {
                is.ifPresent(word -> checkMove(f, word, map));
                place.ifPresent(side -> checkControl(f, side, map));
              });
    }
    return fittings.flatMap(f -> is.map(w -> new StepTest.FittingIs(f, isOpen)));
  }

  private static void checkMove(Fitting fitting, String state, MapNode map) {
    List<Verb> verbs = OPEN.contains(state) ? OPENING : SHUTTING;
    boolean canSet =
        fitting.moves(Verb.SET).stream().anyMatch(m -> m.port().kind() != Port.Kind.CHOICE);
    if (!canSet && verbs.stream().allMatch(v -> fitting.moves(v).isEmpty())) {
      map.findings()
          .add(
              FindingId.NO_SUCH_MOVE,
              map.node("is").map(YamlNode::spot).orElse(map.spot()),
              Say.quoted(fitting.id()) + " cannot be brought to " + Say.quoted(state),
              "It can be told: "
                  + Say.quoted(fitting.acts().keySet().stream().map(Verb::word).toList())
                  + ".");
    }
  }

  private void checkControl(Fitting fitting, Step.Side side, MapNode map) {
    Ship ship = scope.ship();
    boolean isThere =
        fitting.controls().stream()
            .flatMap(c -> ship.place(c.place()).stream())
            .map(Place::isInside)
            .anyMatch(isInside -> isInside == (side == Step.Side.LOCAL));
    if (!isThere) {
      map.findings()
          .add(
              FindingId.NO_SUCH_CONTROL,
              map.node("place").map(YamlNode::spot).orElse(map.spot()),
              Say.quoted(fitting.id())
                  + (side == Step.Side.LOCAL
                      ? " cannot be worked inside the fire room"
                      : " cannot be worked from outside the fire room"),
              "Take `place` out, or name the other side.");
    }
  }

  private Optional<StepTest> readProof(MapNode map) {
    Optional<Gauge> gauge = map.get("read", this::gauge);
    return gauge.flatMap(g -> readProof(map, g));
  }

  /** The bound is kept as the gauge shows it, whatever unit its author wrote. */
  private static Optional<StepTest> readProof(MapNode map, Gauge gauge) {
    NodeReader<Double> shownSi =
        (node, findings) ->
            new ScaleBound(gauge)
                .read(node, findings)
                .map(si -> gauge.unit().toSi(gauge.of().in(gauge.unit(), si)));
    return BoundReader.bound(map, shownSi)
        .map(bound -> new StepTest.ReadProof(gauge.id(), bound, gauge.unit()));
  }

  /** A step is proved by what people can read, never by the plant's true values. */
  private Optional<Gauge> gauge(YamlNode node, Findings findings) {
    Optional<String> truth =
        node instanceof YamlNode.Scalar s && GaugeReader.quantityIds().contains(s.text())
            ? Optional.of(s.text())
            : Optional.empty();
    if (truth.isEmpty() || scope.names().has(Named.GAUGE, truth.get())) {
      return scope.names().one(Named.GAUGE).read(node, findings).flatMap(scope.ship()::gauge);
    }
    List<String> gauges =
        scope.ship().gauges().stream()
            .filter(g -> g.of().id().equals(truth.get()))
            .map(Gauge::id)
            .toList();
    findings.add(
        FindingId.UNKNOWN_GAUGE,
        node.spot(),
        Say.quoted(truth.get()) + " is a true value; a step reads a gauge",
        gauges.isEmpty()
            ? "No gauge of this ship shows it."
            : "It is shown by " + Say.quoted(gauges) + ".");
    return Optional.empty();
  }

  private Optional<StepTest> reported(MapNode map) {
    Optional<String> message = map.get("report", Scalars::id);
    Optional<String> to = map.get("to", scope.names().one(Named.WATCHSTANDER));
    return message.flatMap(m -> to.map(t -> new StepTest.Reported(m, t)));
  }
}
