package handwheel.reader;

import handwheel.casualty.Upon;
import handwheel.casualty.When;
import handwheel.casualty.WitnessLine;
import handwheel.ship.Order;
import java.util.Optional;

/** Reads the lines of the witness. */
final class WitnessReader {
  static final Shape SHAPE =
      Shape.of(
          "a line of the witness",
          Key.must("upon", Form.UPON, "what it waits for"),
          Key.must("wait", Form.TIME, "how long after it"),
          Key.must("say", Form.ORDER, "the order it then says"),
          Key.may("only", Form.MAPPING, "the drawn word with which it is said")
              .with(ConditionReader.DRAWN));

  private final Scope scope;
  private boolean isFirst = true;

  WitnessReader(Scope scope) {
    this.scope = scope;
  }

  Optional<WitnessLine> read(YamlNode node, Findings findings) {
    Optional<WitnessLine> line = MapNode.of(node, SHAPE, findings).flatMap(this::line);
    isFirst = false;
    return line;
  }

  private Optional<WitnessLine> line(MapNode map) {
    Optional<Upon> upon = map.get("upon", new UponReader(scope));
    Optional<Long> waitTicks = map.get("wait", Measures.ticks(0));
    Optional<Order> say = map.get("say", new OrderNode(scope.orders()));
    Optional<When.DrawnIs> only = map.get("only", new ConditionReader(scope)::only);
    if (isFirst && upon.filter(Upon.Said.class::isInstance).isPresent()) {
      map.findings()
          .add(
              FindingId.NOTHING_SAID,
              map.node("upon").map(YamlNode::spot).orElse(map.spot()),
              "the first line waits for the line before it",
              "Let it wait for a cue.");
    }
    return All.there(upon, waitTicks, say)
        ? Optional.of(
            new WitnessLine(
                upon.orElseThrow(),
                waitTicks.orElseThrow(),
                say.orElseThrow().text(),
                map.spot(),
                only))
        : Optional.empty();
  }
}
