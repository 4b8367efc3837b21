package handwheel.reader;

import handwheel.casualty.Bound;
import handwheel.casualty.Grade;
import handwheel.casualty.Step;
import handwheel.casualty.StepTest;
import handwheel.casualty.Window;
import handwheel.ship.Gauge;
import handwheel.units.Measure;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** Reads the graded steps. */
final class StepReader {
  private static final List<String> TESTS = List.of("order", "fitting", "read", "report", "muster");

  private final Lexicon lexicon;

  StepReader(Lexicon lexicon) {
    this.lexicon = lexicon;
  }

  /** The keys of a step. */
  static final Shape STEP =
      Shape.of(
              "a step",
              Key.must("id", Form.ID, "its id"),
              Key.may("order", Form.ORDER, "an order that is given"),
              Key.may("fitting", Form.IDS, "fittings brought to a state"),
              Key.may("is", Form.WORD, "open or shut").with(List.of("open", "shut")),
              Key.may("read", Form.ID, "a gauge that is read"),
              Key.may("below", Form.QUANTITY, "what it must show"),
              Key.may("above", Form.QUANTITY, "what it must show"),
              Key.may("report", Form.ID, "a report that is passed"),
              Key.may("to", Form.ID, "to whom"),
              Key.may("muster", Form.WORD, "the head count").with(List.of("counted")),
              Key.may("within", Form.WINDOW, "how soon it must be begun"),
              Key.may("done", Form.WINDOW, "how soon its effect must be complete"),
              Key.may("place", Form.WORD, "where it is best done").with(List.of("local", "remote")),
              Key.may("after", Form.NAMED, "steps that come before, each with its rule"))
          .plus(GradeReader.KEYS);

  Optional<Step> read(MapNode map) {
    Optional<String> id = map.get("id", Scalars::id);
    Optional<StepTest> test = map.oneOf(TESTS).flatMap(kind -> test(kind, map));
    Optional<Window> within = map.get("within", this::window);
    Optional<Window> done = map.get("done", this::window);
    Optional<Step.Side> place =
        map.word("place").map(p -> Step.Side.valueOf(p.toUpperCase(Locale.ROOT)));
    SortedMap<String, String> after = map.get("after", this::after).orElse(new TreeMap<>());
    Optional<Grade> grade = GradeReader.read(map);
    if (id.isEmpty() || test.isEmpty() || grade.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(new Step(id.get(), test.get(), within, done, place, after, grade.get()));
  }

  private Optional<StepTest> test(String kind, MapNode map) {
    return switch (kind) {
      case "order" ->
          map.get("order", Orders.of(lexicon.ship(), lexicon.messages()))
              .map(o -> new StepTest.Ordered(o.text()));
      case "fitting" -> {
        Optional<List<String>> fittings = map.get("fitting", Scalars.ids(lexicon.fitting()));
        Optional<String> is = map.oneOf(List.of("is")).flatMap(k -> map.word(k));
        yield fittings.flatMap(f -> is.map(w -> new StepTest.FittingIs(f, w.equals("open"))));
      }
      case "read" -> proof(map);
      case "report" -> {
        Optional<String> message = map.get("report", lexicon.message());
        Optional<String> to = map.oneOf(List.of("to")).flatMap(k -> map.get(k, lexicon.who()));
        yield message.flatMap(m -> to.map(t -> new StepTest.Reported(m, t)));
      }
      default -> map.word("muster").map(m -> new StepTest.Mustered());
    };
  }

  private Optional<StepTest> proof(MapNode map) {
    Optional<Gauge> gauge = map.get("read", lexicon.gauge()).flatMap(lexicon.ship()::gauge);
    Optional<String> side = map.oneOf(List.of("below", "above"));
    if (gauge.isEmpty() || side.isEmpty()) {
      return Optional.empty();
    }
    Gauge g = gauge.get();
    Optional<Measure> at = map.get(side.get(), Measures.measure(Wanted.of(g.of())));
    return at.map(
        m ->
            new StepTest.ReadProof(
                g.id(),
                new Bound(side.get().equals("below"), g.of().si(m).orElseThrow()),
                m.unit()));
  }

  private Optional<Window> window(YamlNode node, Findings findings) {
    return Windows.read(node, lexicon.cues(), findings);
  }

  private Optional<SortedMap<String, String>> after(YamlNode node, Findings findings) {
    if (!(node instanceof YamlNode.Mapping mapping)) {
      Scalars.wrongForm(node, "a mapping of steps and rules", findings);
      return Optional.empty();
    }
    SortedMap<String, String> after = new TreeMap<>();
    for (YamlNode.Entry e : mapping.entries()) {
      Optional<String> step =
          Names.of("a step of the response", lexicon.steps()).read(e.key(), findings);
      Optional<String> rule = GradeReader.rule(e.value(), findings);
      if (step.isPresent() && rule.isPresent()) {
        after.put(step.get(), rule.get());
      } else {
        findings.lose();
      }
    }
    return Optional.of(after);
  }
}
