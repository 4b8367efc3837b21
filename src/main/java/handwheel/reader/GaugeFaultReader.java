package handwheel.reader;

import handwheel.casualty.Fault;
import handwheel.ship.Gauge;
import handwheel.units.Measure;
import handwheel.units.Unit;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Reads what is wrong with a gauge. */
final class GaugeFaultReader {
  private static final String WRONG = "gauge-wrong";
  private static final String GLASS = "glass-blocked";

  static final Map<String, Shape> SHAPES = shapes();

  private final Scope scope;

  GaugeFaultReader(Scope scope) {
    this.scope = scope;
  }

  private static Map<String, Shape> shapes() {
    Key gauge = Key.must("gauge", Form.ID, "the gauge");
    Key reads = Key.must("reads", Form.WORD, "what is wrong with it").with(troubles());
    Key by = Key.may("by", Form.QUANTITY, "how far it is out");
    Map<String, Shape> shapes = new LinkedHashMap<>();
    List<Key> own = List.of(gauge, reads, by);
    shapes.put(WRONG, FaultShapes.shape("a wrong gauge", WRONG, own, FaultShapes.MAY_RAMP));
    Key fills = Key.must(FaultShapes.RAMP, Form.AMOUNT, "how long it takes to fill");
    shapes.put(
        GLASS, FaultShapes.shape("a blocked glass", GLASS, List.of(gauge), Optional.of(fills)));
    return shapes;
  }

  private static List<String> troubles() {
    return Arrays.stream(Fault.GaugeTrouble.values())
        .map(t -> t.name().toLowerCase(Locale.ROOT))
        .toList();
  }

  Optional<FaultReader.Maker> read(String word, MapNode map) {
    Optional<Gauge> gauge =
        map.get("gauge", scope.names().one(Named.GAUGE)).flatMap(scope.ship()::gauge);
    if (word.equals(GLASS)) {
      // The steam in a glass whose steam cock is blocked turns to water, and the glass fills.
      return gauge.map(g -> maker(g, Fault.GaugeTrouble.FULL, 0));
    }
    Optional<Fault.GaugeTrouble> trouble =
        map.word("reads").map(w -> Fault.GaugeTrouble.valueOf(w.toUpperCase(Locale.ROOT)));
    Optional<Double> by = trouble.flatMap(t -> by(map, gauge, isOff(t)));
    return All.there(gauge, trouble, by)
        ? Optional.of(maker(gauge.orElseThrow(), trouble.orElseThrow(), by.orElseThrow()))
        : Optional.empty();
  }

  private static boolean isOff(Fault.GaugeTrouble trouble) {
    return trouble == Fault.GaugeTrouble.HIGH || trouble == Fault.GaugeTrouble.LOW;
  }

  private static Optional<Double> by(MapNode map, Optional<Gauge> gauge, boolean isOff) {
    if (isOff == map.has("by")) {
      return isOff ? gauge.flatMap(g -> map.get("by", difference(g.unit()))) : Optional.of(0.0);
    }
    map.findings()
        .add(
            isOff ? FindingId.MISSING_KEY : FindingId.CONFLICTING_KEYS,
            map.spot(),
            isOff
                ? "a gauge that reads high or low needs `by`: how far it is out"
                : "`by` has no meaning for a gauge that is stuck, full or empty",
            "");
    return Optional.empty();
  }

  private static NodeReader<Double> difference(Unit unit) {
    Wanted wanted = new Wanted("a difference in `" + unit.symbol() + "`", List.of(unit));
    return (n, f) -> Measures.measure(wanted).read(n, f).map(Measure::figure);
  }

  private static FaultReader.Maker maker(Gauge gauge, Fault.GaugeTrouble trouble, double by) {
    return (id, course) -> new Fault.OfGauge(id, gauge.id(), trouble, by, course);
  }
}
