package handwheel.reader;

import handwheel.plant.Quantity;
import handwheel.ship.Gauge;
import handwheel.units.Unit;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads gauges. */
final class GaugeReader {
  static final Shape SHAPE =
      Shape.of(
          "a gauge",
          Key.must("id", Form.ID, "its id"),
          Key.must("name", Form.TEXT, "what people call it"),
          Key.must("of", Form.DOTTED_ID, "the true value behind it"),
          Key.must("at", Form.IDS, "the places where it can be read"),
          Key.must("unit", Form.WORD, "the unit of its scale"),
          Key.must("range", Form.RANGE, "the ends of its scale"),
          Key.may("lag", Form.QUANTITY, "how far it lags behind"));

  private static final Pattern RANGE = Pattern.compile("(\\S+?) ?\\.\\. ?(\\S+)");
  private static final double LONGEST_LAG_S = 600;

  private final Names names;

  GaugeReader(Names names) {
    this.names = names;
  }

  Optional<Gauge> read(YamlNode node, Findings findings) {
    return MapNode.of(node, SHAPE, findings).flatMap(this::gauge);
  }

  private Optional<Gauge> gauge(MapNode map) {
    Optional<String> id = map.get("id", Scalars::id);
    Optional<String> name = map.get("name", Scalars.text(Limits.NAME_CHARS));
    Optional<Quantity> of = map.get("of", GaugeReader::quantity);
    Optional<List<String>> at = map.get("at", Scalars.ids(names.one(Named.PLACE)));
    Optional<Unit> unit = of.flatMap(q -> map.get("unit", (n, f) -> unit(n, q, f)));
    Optional<Range> range = map.get("range", GaugeReader::range);
    double lagS = map.get("lag", Measures.si(Wanted.TIME, 0, LONGEST_LAG_S)).orElse(0.0);
    return All.there(id, name, of, at, unit, range)
        ? Optional.of(
            new Gauge(
                id.orElseThrow(),
                name.orElseThrow(),
                of.orElseThrow(),
                at.orElseThrow(),
                unit.orElseThrow(),
                range.orElseThrow().low(),
                range.orElseThrow().high(),
                lagS))
        : Optional.empty();
  }

  /** Reads a true value of the plant by its name. */
  static Optional<Quantity> quantity(YamlNode node, Findings findings) {
    Optional<YamlNode.Scalar> name = Scalars.scalar(node, "a true value of the plant", findings);
    Optional<Quantity> quantity = name.flatMap(s -> Quantity.ofId(s.text()));
    if (name.isPresent() && quantity.isEmpty()) {
      findings.add(
          FindingId.UNKNOWN_QUANTITY,
          node.spot(),
          Say.quoted(name.get().text()) + " is no true value of the plant",
          Say.offer(name.get().text(), quantityIds()));
    }
    return quantity;
  }

  /** Returns the names of the plant's true values. */
  static List<String> quantityIds() {
    return Arrays.stream(Quantity.values()).map(Quantity::id).toList();
  }

  private static Optional<Unit> unit(YamlNode node, Quantity of, Findings findings) {
    Wanted wanted = Wanted.of(of);
    Optional<YamlNode.Scalar> symbol = Scalars.scalar(node, "a unit", findings);
    Optional<Unit> unit = symbol.flatMap(s -> Unit.ofSymbol(s.text()));
    if (symbol.isPresent() && unit.isEmpty()) {
      new UnitFault(symbol.get(), wanted, findings).unknown(symbol.get().text(), 0);
    } else if (unit.isPresent() && !of.shows(unit.get())) {
      new UnitFault(symbol.orElseThrow(), wanted, findings).wrong(unit.get());
      return Optional.empty();
    }
    return unit;
  }

  private static Optional<Range> range(YamlNode node, Findings findings) {
    return Scalars.scalar(node, "a range", findings).flatMap(s -> range(s, findings));
  }

  private static Optional<Range> range(YamlNode.Scalar scalar, Findings findings) {
    Matcher ends = RANGE.matcher(scalar.text());
    if (ends.matches() && Scalars.isNumber(ends.group(1)) && Scalars.isNumber(ends.group(2))) {
      Range range = new Range(Double.parseDouble(ends.group(1)), Double.parseDouble(ends.group(2)));
      if (range.low() < range.high()) {
        return Optional.of(range);
      }
    }
    findings.add(
        FindingId.BAD_RANGE,
        scalar.spot(),
        Say.quoted(scalar.text()) + " is no range from a lower to a higher figure",
        "Write such as `0..800`, in the gauge's unit.");
    return Optional.empty();
  }

  /** Two ends of a scale in the gauge's unit. */
  private record Range(double low, double high) {}
}
