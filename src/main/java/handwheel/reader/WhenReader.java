package handwheel.reader;

import handwheel.casualty.Bound;
import handwheel.casualty.Truth;
import handwheel.casualty.When;
import handwheel.plant.Quantity;
import handwheel.ship.Gauge;
import handwheel.units.Measure;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Reads conditions: small mappings, no expressions. */
final class WhenReader {
  private static final List<String> KINDS =
      List.of("plant", "gauge", "report", "cue", "count", "all");
  private static final List<String> BOUNDS = List.of("below", "above", "is");

  /** The keys of a condition. */
  static final Shape WHEN =
      Shape.of(
          "a condition",
          Key.may("plant", Form.DOTTED_ID, "a true value"),
          Key.may("gauge", Form.ID, "what a gauge shows"),
          Key.may("report", Form.ID, "a report"),
          Key.may("cue", Form.ID, "a cue"),
          Key.may("count", Form.WORD, "the head count").with(List.of("whole")),
          Key.may("all", Form.LIST, "several conditions at once"),
          Key.may("below", Form.QUANTITY, "it must be below"),
          Key.may("above", Form.QUANTITY, "it must be above"),
          Key.may("is", Form.WORD, "true, false, passed, given or open")
              .with(List.of("true", "false", "passed", "given", "open")),
          Key.may("for", Form.TIME, "for so long without a break"));

  private final Lexicon lexicon;

  WhenReader(Lexicon lexicon) {
    this.lexicon = lexicon;
  }

  NodeReader<When> reader() {
    return MapNode.reader(WHEN, this::read);
  }

  private Optional<When> read(MapNode map) {
    return map.oneOf(KINDS)
        .flatMap(
            kind ->
                switch (kind) {
                  case "plant" -> plant(map);
                  case "gauge" -> gauge(map);
                  case "report" ->
                      map.get("report", lexicon.message())
                          .map(m -> new When.ReportPassed(m, is(map)));
                  case "cue" ->
                      map.get("cue", lexicon.cue()).map(c -> new When.CueGiven(c, is(map)));
                  case "count" -> map.word("count").map(c -> new When.CountDone(is(map)));
                  default -> all(map);
                });
  }

  /** Returns whether it must be so; only {@code false} and {@code open} say no. */
  private static boolean is(MapNode map) {
    return map.word("is").map(w -> !w.equals("false") && !w.equals("open")).orElse(true);
  }

  private Optional<When> all(MapNode map) {
    List<When> parts = map.list("all", Limits.SCRIPT_ITEMS, reader());
    return parts.isEmpty() ? Optional.empty() : Optional.of(new When.All(parts));
  }

  private Optional<When> plant(MapNode map) {
    Optional<Truth> truth = map.get("plant", this::truth);
    return truth.flatMap(t -> bound(map, of(t)).map(b -> new When.PlantIs(t, b, forTicks(map))));
  }

  private Optional<When> gauge(MapNode map) {
    Optional<Gauge> gauge = map.get("gauge", lexicon.gauge()).flatMap(lexicon.ship()::gauge);
    return gauge.flatMap(
        g -> bound(map, g.of()).map(b -> new When.GaugeIs(g.id(), b, forTicks(map))));
  }

  private static long forTicks(MapNode map) {
    return map.get("for", Measures.ticks(1)).orElse(0L);
  }

  private static Quantity of(Truth truth) {
    return truth instanceof Truth.Of o ? o.quantity() : Quantity.LEAK_MAIN_RUN_FLOW;
  }

  /** Reads the bound of a value: below, above, or is true or false. */
  static Optional<Bound> bound(MapNode map, Quantity quantity) {
    return map.oneOf(BOUNDS)
        .flatMap(
            key ->
                key.equals("is")
                    ? map.word("is").map(w -> new Bound(w.equals("false"), 0.5))
                    : map.get(key, Measures.measure(Wanted.of(quantity)))
                        .map(m -> new Bound(key.equals("below"), si(quantity, m))));
  }

  private static double si(Quantity quantity, Measure measure) {
    return quantity.si(measure).orElseThrow();
  }

  private Optional<Truth> truth(YamlNode node, Findings findings) {
    List<String> ids = new ArrayList<>();
    lexicon.leaks().forEach(leak -> ids.add(new Truth.LeakFlow(leak).id()));
    List<String> flows = List.copyOf(ids);
    Arrays.stream(Quantity.values()).map(Quantity::id).forEach(ids::add);
    return Names.of("a true value", ids)
        .read(node, findings)
        .map(
            id ->
                flows.contains(id)
                    ? new Truth.LeakFlow(lexicon.leaks().get(flows.indexOf(id)))
                    : new Truth.Of(Quantity.ofId(id).orElseThrow()));
  }
}
