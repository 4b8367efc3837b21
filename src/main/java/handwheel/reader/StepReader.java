package handwheel.reader;

import handwheel.casualty.Grade;
import handwheel.casualty.Step;
import handwheel.casualty.StepTest;
import handwheel.casualty.When;
import handwheel.casualty.Window;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** Reads the graded steps of the response. */
final class StepReader {
  private static final List<String> SIDES = List.of("local", "remote");

  private static final List<Key> KEYS =
      List.of(
          Key.may("within", Form.WINDOW, "how soon it must be done"),
          Key.may("done", Form.WINDOW, "how soon its effect must be complete"),
          Key.may("place", Form.WORD, "where it is best done").with(SIDES),
          Key.may("after", Form.NAMED, "the steps that come before it, each with its trade rule"),
          Key.may("only", Form.MAPPING, "the drawn word with which it is asked for")
              .with(ConditionReader.DRAWN));

  static final OneShapeOf SHAPES =
      OneShapeOf.of(
          "a step",
          List.of("order", "fitting", "read", "report", "muster"),
          shape(
              "a step that is an order", Key.must("order", Form.ORDER, "the order that is given")),
          shape(
              "a step on fittings",
              Key.must("fitting", Form.IDS, "the fittings"),
              Key.must("is", Form.WORD, "the state they are brought to")
                  .with(StepTestReader.STATES)),
          shape(
              "a step that is a reading",
              Key.must("read", Form.ID, "the gauge that is read"),
              Key.may("below", Form.QUANTITY, "it must show less"),
              Key.may("above", Form.QUANTITY, "it must show more")),
          shape(
              "a step that is a report",
              Key.must("report", Form.ID, "the report that is passed"),
              Key.must("to", Form.ID, "who is told")),
          shape(
              "a step that is a head count",
              Key.must("muster", Form.WORD, "`counted`").with(List.of("counted"))));

  private final Scope scope;
  private final StepTestReader tests;

  StepReader(Scope scope) {
    this.scope = scope;
    this.tests = new StepTestReader(scope);
  }

  private static Shape shape(String what, Key... test) {
    return Shape.of(what, Key.must("id", Form.ID, "its id"))
        .plus(List.of(test))
        .plus(KEYS)
        .plus(GradeReader.KEYS);
  }

  Optional<Step> read(YamlNode node, Findings findings) {
    Optional<MapNode> map = SHAPES.read(node, findings);
    Optional<String> kind =
        SHAPES.byKey().keySet().stream().filter(k -> node.at(k).isPresent()).findFirst();
    return map.flatMap(m -> kind.flatMap(k -> step(k, m)));
  }

  private Optional<Step> step(String kind, MapNode map) {
    Optional<String> id = map.get("id", Scalars::id);
    Optional<Step.Side> place =
        map.word("place").map(w -> Step.Side.valueOf(w.toUpperCase(Locale.ROOT)));
    Optional<StepTest> test = tests.read(kind, map, place);
    Optional<Window> within = map.get("within", new WindowReader(scope));
    Optional<Window> done = map.get("done", new WindowReader(scope));
    SortedMap<String, String> after = map.get("after", this::after).orElseGet(TreeMap::new);
    Optional<Grade> grade = GradeReader.read(map);
    Optional<When.DrawnIs> only = map.get("only", new ConditionReader(scope)::only);
    checkOrder(map, within, done);
    List.of("within", "done").forEach(k -> checkOther(map, k, id));
    return All.there(id, test, grade)
        ? Optional.of(
            new Step(
                id.orElseThrow(),
                test.orElseThrow(),
                within,
                done,
                place,
                after,
                grade.orElseThrow(),
                only))
        : Optional.empty();
  }

  private static void checkOther(MapNode map, String key, Optional<String> id) {
    Optional<YamlNode> node = map.node(key);
    boolean isItself =
        node.filter(n -> n instanceof YamlNode.Scalar s && id.isPresent() && isOf(s, id.get()))
            .isPresent();
    if (isItself) {
      map.findings()
          .add(
              FindingId.NOT_A_WINDOW,
              node.orElseThrow().spot(),
              "the time of step " + Say.quoted(id.orElseThrow()) + " runs from the step itself",
              "Let it run from a cue, a phase or another step.");
    }
  }

  private static boolean isOf(YamlNode.Scalar scalar, String id) {
    return scalar.text().strip().endsWith(" step " + id);
  }

  private static boolean isSameStart(Window one, Window other) {
    return one.since() == other.since() && one.of().equals(other.of());
  }

  private static void checkOrder(MapNode map, Optional<Window> within, Optional<Window> done) {
    boolean isSwapped =
        within
            .flatMap(w -> done.filter(d -> isSameStart(d, w) && d.ticks() < w.ticks()))
            .isPresent();
    if (isSwapped) {
      map.findings()
          .add(
              FindingId.DONE_BEFORE_WITHIN,
              map.node("done").map(YamlNode::spot).orElse(map.spot()),
              "the effect is due (`done`) before the act (`within`)",
              "`done` is the later of the two.");
    }
  }

  private Optional<SortedMap<String, String>> after(YamlNode node, Findings findings) {
    if (!(node instanceof YamlNode.Mapping mapping)) {
      Scalars.wrongForm(node, "a mapping such as `{fires-out: O2}`", findings);
      return Optional.empty();
    }
    SortedMap<String, String> after = new TreeMap<>();
    for (YamlNode.Entry entry : mapping.entries()) {
      Optional<String> step = scope.names().one(Named.STEP).read(entry.key(), findings);
      Optional<String> rule = GradeReader.rule(entry.value(), findings);
      if (All.there(step, rule)) {
        after.put(step.orElseThrow(), rule.orElseThrow());
      } else {
        findings.lose();
      }
    }
    return Optional.of(after);
  }
}
