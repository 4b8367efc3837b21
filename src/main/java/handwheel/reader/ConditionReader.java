package handwheel.reader;

import handwheel.casualty.Bound;
import handwheel.casualty.Truth;
import handwheel.casualty.When;
import handwheel.plant.Quantity;
import handwheel.ship.Gauge;
import handwheel.units.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads the conditions of ways out and nevers. There is no expression language. */
final class ConditionReader implements NodeReader<When> {
  private static final String IS = "is";
  private static final Key BELOW = Key.may("below", Form.QUANTITY, "it must be below this");
  private static final Key ABOVE = Key.may("above", Form.QUANTITY, "it must be above this");
  private static final Key FOR = Key.may("for", Form.TIME, "how long without a break");

  private static final Shape PLANT =
      Shape.of(
          "a `plant:` condition",
          Key.must("plant", Form.DOTTED_ID, "a true value of the plant"),
          BELOW,
          ABOVE,
          Key.may(IS, Form.TRUE_FALSE, "whether it must be so"),
          FOR);

  private static final Shape GAUGE =
      Shape.of("a `gauge:` condition", Key.must("gauge", Form.ID, "a gauge"), BELOW, ABOVE, FOR);

  private static final Shape REPORT =
      Shape.of(
          "a `report:` condition",
          Key.must("report", Form.ID, "a report"),
          Key.must(IS, Form.WORD, "whether it was passed").with(List.of("passed", "open")));

  private static final Shape CUE =
      Shape.of(
          "a `cue:` condition",
          Key.must("cue", Form.ID, "a cue"),
          Key.must(IS, Form.WORD, "whether it was given").with(List.of("given", "open")));

  private static final Shape COUNT =
      Shape.of(
          "a `count:` condition",
          Key.must("count", Form.WORD, "the watch was counted").with(List.of("whole")),
          Key.must(IS, Form.TRUE_FALSE, "whether it must be so"));

  static final Shape DRAWN =
      Shape.of(
          "a `drawn:` condition",
          Key.must("drawn", Form.ID, "a variation that draws words"),
          Key.must(IS, Form.ID, "the word that must have been drawn"));

  private static final Shape ALL =
      Shape.of("an `all:` condition", Key.must("all", Form.CONDITIONS, "all of these must hold"));

  static final OneShapeOf SHAPES =
      OneShapeOf.of(
          "a condition",
          List.of("plant", "gauge", "report", "cue", "count", "drawn", "all"),
          PLANT,
          GAUGE,
          REPORT,
          CUE,
          COUNT,
          DRAWN,
          ALL);

  private final Scope scope;

  ConditionReader(Scope scope) {
    this.scope = scope;
  }

  /** Returns the name of a leak's flow. */
  static String leakFlow(String fault) {
    return "leak." + fault + ".flow";
  }

  @Override
  public Optional<When> read(YamlNode node, Findings findings) {
    Optional<MapNode> map = SHAPES.read(node, findings);
    Optional<String> kind =
        SHAPES.byKey().keySet().stream().filter(k -> node.at(k).isPresent()).findFirst();
    return map.flatMap(m -> kind.flatMap(k -> condition(k, m)));
  }

  private Optional<When> condition(String kind, MapNode map) {
    return switch (kind) {
      case "plant" -> map.get("plant", this::truth).flatMap(t -> plant(t, map));
      case "gauge" -> gauge(map);
      case "report" -> named(map, "report", Named.REPORT, "passed", When.ReportPassed::new);
      case "cue" -> named(map, "cue", Named.CUE, "given", When.CueGiven::new);
      case "count" -> count(map);
      case "drawn" -> drawn(map);
      default -> all(map);
    };
  }

  private Optional<Truth> truth(YamlNode node, Findings findings) {
    Optional<YamlNode.Scalar> name = Scalars.scalar(node, "a true value of the plant", findings);
    List<String> faults = scope.names().ids(Named.LEAK);
    Optional<String> fault =
        name.flatMap(s -> faults.stream().filter(f -> leakFlow(f).equals(s.text())).findFirst());
    if (fault.isPresent()) {
      return fault.map(Truth.LeakFlow::new);
    }
    Optional<Quantity> quantity = name.flatMap(s -> Quantity.ofId(s.text()));
    if (name.isPresent() && quantity.isEmpty()) {
      reportUnknown(name.get(), faults, findings);
    }
    return quantity.map(Truth.Of::new);
  }

  private void reportUnknown(YamlNode.Scalar name, List<String> faults, Findings findings) {
    List<String> valid = new ArrayList<>(GaugeReader.quantityIds());
    faults.forEach(f -> valid.add(leakFlow(f)));
    boolean isLeak = name.text().matches("leak\\.[a-z0-9-]+\\.flow");
    boolean isGauge = scope.names().has(Named.GAUGE, name.text());
    findings.add(
        isLeak ? FindingId.UNKNOWN_FAULT : FindingId.UNKNOWN_QUANTITY,
        name.spot(),
        Say.quoted(name.text())
            + (isLeak
                ? " is the flow of no leak in this script"
                : " is no true value of the plant"),
        isGauge
            ? "It is a gauge; write `gauge: " + name.text() + "`."
            : Say.offer(name.text(), valid));
  }

  private Optional<When> plant(Truth truth, MapNode map) {
    Quantity quantity = truth instanceof Truth.Of of ? of.quantity() : Quantity.LEAK_ROOM_FLOW;
    long forTicks = map.get("for", Measures.ticks(0)).orElse(0L);
    Optional<String> key = map.oneOf(List.of(BoundReader.BELOW, BoundReader.ABOVE, IS));
    Optional<Bound> bound =
        key.flatMap(
            k ->
                k.equals(IS)
                    ? flag(quantity, map)
                    : BoundReader.bound(map, BoundReader.si(quantity)));
    return bound.map(b -> new When.PlantIs(truth, b, forTicks));
  }

  /** True and false are 1 and 0; the bound lies between. */
  private static Optional<Bound> flag(Quantity quantity, MapNode map) {
    Optional<Boolean> is = map.get(IS, Scalars::trueOrFalse);
    if (quantity.unit().dimension() == Dimension.FRACTION) {
      return is.map(i -> new Bound(!i, 0.5));
    }
    map.findings()
        .add(
            FindingId.CONDITION_FORM,
            map.spot(),
            "`is` asks for true or false, and this is " + Wanted.of(quantity).words(),
            "Ask with `below` or `above`.");
    map.findings().lose();
    return Optional.empty();
  }

  private Optional<When> gauge(MapNode map) {
    Optional<Gauge> gauge =
        map.get("gauge", scope.names().one(Named.GAUGE)).flatMap(scope.ship()::gauge);
    long forTicks = map.get("for", Measures.ticks(0)).orElse(0L);
    return gauge.flatMap(
        g ->
            BoundReader.bound(map, new ScaleBound(g))
                .map(b -> new When.GaugeIs(g.id(), b, forTicks)));
  }

  private Optional<When> named(MapNode map, String key, Named kind, String yes, NamedWhen when) {
    Optional<String> id = map.get(key, scope.names().one(kind));
    Optional<String> is = map.word(IS);
    return id.flatMap(i -> is.map(w -> when.of(i, w.equals(yes))));
  }

  private static Optional<When> count(MapNode map) {
    Optional<String> whole = map.word("count");
    Optional<Boolean> is = map.get(IS, Scalars::trueOrFalse);
    return whole.flatMap(w -> is.map(When.CountDone::new));
  }

  /** Reads the drawn word with which a step or a line is there. */
  Optional<When.DrawnIs> only(YamlNode node, Findings findings) {
    return MapNode.of(node, DRAWN, findings).flatMap(this::drawn).map(When.DrawnIs.class::cast);
  }

  private Optional<When> drawn(MapNode map) {
    Optional<String> name = map.get("drawn", scope.names().one(Named.VARIATION));
    return name.flatMap(
        n ->
            map.get(IS, (node, findings) -> scope.amounts().word(n, node, findings))
                .map(index -> new When.DrawnIs(n, index)));
  }

  private Optional<When> all(MapNode map) {
    List<When> parts = map.list("all", Limits.SCRIPT_ITEMS, this);
    boolean isEmpty =
        map.node("all").filter(n -> n instanceof YamlNode.Items && n.items().isEmpty()).isPresent();
    if (isEmpty) {
      map.findings()
          .add(FindingId.EMPTY_LIST, map.spot(), "`all` has no conditions", "Name at least one.");
    }
    return parts.isEmpty() ? Optional.empty() : Optional.of(new When.All(parts));
  }

  /** Makes a condition of an id and whether it must be so. */
  @FunctionalInterface
  private interface NamedWhen {
    When of(String id, boolean is);
  }
}
