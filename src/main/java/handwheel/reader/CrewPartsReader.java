package handwheel.reader;

import handwheel.plant.Quantity;
import handwheel.ship.Gauge;
import handwheel.ship.Order;
import handwheel.ship.Ship;
import handwheel.ship.StandingAct;
import handwheel.ship.Watchstander;
import handwheel.units.Unit;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads gauges, the watch and what drilled men do unordered. */
final class CrewPartsReader {
  private static final Pattern RANGE =
      Pattern.compile("(-?\\d+(?:\\.\\d+)?)\\.\\.(-?\\d+(?:\\.\\d+)?)");
  private static final List<String> QUANTITIES =
      Arrays.stream(Quantity.values()).map(Quantity::id).toList();
  private static final List<String> UNITS = Arrays.stream(Unit.values()).map(Unit::symbol).toList();

  /** The keys of a gauge. */
  static final Shape GAUGE =
      Shape.of(
          "a gauge",
          Key.must("id", Form.ID, "its id"),
          Key.must("name", Form.TEXT, "what people call it"),
          Key.must("of", Form.DOTTED_ID, "the true value behind it"),
          Key.must("at", Form.IDS, "where it can be read"),
          Key.must("unit", Form.WORD, "unit of the scale").with(UNITS),
          Key.must("range", Form.RANGE, "ends of the scale"),
          Key.may("lag", Form.TIME, "first-order lag"));

  /** The keys of a watchstander. */
  static final Shape WATCHSTANDER =
      Shape.of(
          "a watchstander",
          Key.must("id", Form.ID, "his station"),
          Key.must("title", Form.TEXT, "the station in words"),
          Key.must("name", Form.TEXT, "his invented name"),
          Key.must("at", Form.ID, "where he stands"),
          Key.may("holds", Form.IDS, "gauges he holds by hand"));

  /** The keys of a standing act. */
  static final Shape STANDING =
      Shape.of(
          "a standing act",
          Key.must("who", Form.ID, "station"),
          Key.must("sees", Form.DOTTED_ID, "the value before his eyes"),
          Key.must("below", Form.QUANTITY, "he acts when it falls below"),
          Key.must("after", Form.TIME, "his delay"),
          Key.must("do", Form.ORDER, "what he does"));

  private final List<String> places;
  private final List<String> gauges;

  CrewPartsReader(List<String> places, List<String> gauges) {
    this.places = places;
    this.gauges = gauges;
  }

  List<Gauge> gauges(MapNode ship) {
    return ship.list("gauges", Limits.SHIP_ITEMS, MapNode.reader(GAUGE, this::gauge));
  }

  List<Watchstander> watch(MapNode ship) {
    return ship.list(
        "watch", Limits.SCRIPT_ITEMS, MapNode.reader(WATCHSTANDER, this::watchstander));
  }

  List<StandingAct> standing(MapNode map, Ship ship) {
    return map.list(
        "standing", Limits.SCRIPT_ITEMS, MapNode.reader(STANDING, m -> standingAct(m, ship)));
  }

  static Optional<Quantity> quantity(YamlNode node, Findings findings) {
    return Names.of("a true value", QUANTITIES).read(node, findings).flatMap(Quantity::ofId);
  }

  private Optional<Gauge> gauge(MapNode map) {
    Optional<String> id = map.get("id", Scalars::id);
    Optional<String> name = map.get("name", Scalars.text(Limits.NAME_CHARS));
    Optional<Quantity> of = map.get("of", CrewPartsReader::quantity);
    Optional<List<String>> at = map.get("at", Scalars.ids(Names.of("a place", places)));
    Optional<Unit> unit = map.word("unit").flatMap(Unit::ofSymbol);
    Optional<double[]> range = map.get("range", CrewPartsReader::range);
    double lagS = map.get("lag", Measures.si(Wanted.TIME, 0, 60)).orElse(0.0);
    boolean isWhole = id.isPresent() && name.isPresent() && at.isPresent() && range.isPresent();
    if (!isWhole || of.isEmpty() || unit.isEmpty() || !shows(map, of.get(), unit.get())) {
      return Optional.empty();
    }
    double[] ends = range.get();
    return Optional.of(
        new Gauge(id.get(), name.get(), of.get(), at.get(), unit.get(), ends[0], ends[1], lagS));
  }

  private static boolean shows(MapNode map, Quantity of, Unit unit) {
    if (of.shows(unit)) {
      return true;
    }
    map.findings()
        .add(
            FindingId.WRONG_UNIT,
            map.spot(),
            "`" + of.id() + "` cannot be shown in `" + unit.symbol() + "`",
            "Units that fit: " + Say.quoted(Wanted.of(of).symbols()) + ".");
    return false;
  }

  private static Optional<double[]> range(YamlNode node, Findings findings) {
    Optional<YamlNode.Scalar> scalar = Scalars.scalar(node, "LOW..HIGH", findings);
    Optional<Matcher> m =
        scalar.map(s -> RANGE.matcher(s.text())).filter(Matcher::matches).filter(x -> rises(x));
    if (scalar.isPresent() && m.isEmpty()) {
      findings.add(
          FindingId.NOT_A_RANGE,
          node.spot(),
          Say.quoted(scalar.get().text()) + " stands here where LOW..HIGH was expected",
          "Write such as `0..800`.");
    }
    return m.map(x -> new double[] {low(x), high(x)});
  }

  private static boolean rises(Matcher m) {
    return low(m) < high(m);
  }

  private static double low(Matcher m) {
    return Double.parseDouble(m.group(1));
  }

  private static double high(Matcher m) {
    return Double.parseDouble(m.group(2));
  }

  private Optional<Watchstander> watchstander(MapNode map) {
    Optional<String> id = map.get("id", Scalars::id);
    Optional<String> title = map.get("title", Scalars.text(Limits.NAME_CHARS));
    Optional<String> name = map.get("name", Scalars.text(Limits.NAME_CHARS));
    Optional<String> at = map.get("at", Names.of("a place", places));
    List<String> holds =
        map.get("holds", Scalars.ids(Names.of("a gauge", gauges))).orElse(List.of());
    if (id.isEmpty() || title.isEmpty() || name.isEmpty() || at.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(new Watchstander(id.get(), title.get(), name.get(), at.get(), holds));
  }

  private static Optional<StandingAct> standingAct(MapNode map, Ship ship) {
    List<String> watch = ship.watch().stream().map(Watchstander::id).toList();
    Optional<String> who = map.get("who", Names.of("a watchstander", watch));
    Optional<Quantity> sees = map.get("sees", CrewPartsReader::quantity);
    Optional<Double> below =
        sees.flatMap(q -> map.get("below", Measures.measure(Wanted.of(q))))
            .flatMap(m -> sees.map(q -> q.si(m).orElseThrow()));
    Optional<Double> afterS = map.get("after", Measures.wholeTicksS(1));
    Optional<Order> order = map.get("do", Orders.of(ship, List.of()));
    boolean isWhole = who.isPresent() && sees.isPresent() && below.isPresent();
    if (!isWhole || afterS.isEmpty() || order.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new StandingAct(who.get(), sees.get(), below.get(), afterS.get(), order.get()));
  }
}
