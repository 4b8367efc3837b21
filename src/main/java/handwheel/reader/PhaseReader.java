package handwheel.reader;

import handwheel.casualty.Amount;
import handwheel.casualty.Phase;
import handwheel.casualty.PhaseAct;
import handwheel.casualty.When;
import java.util.List;
import java.util.Optional;

/** Reads the phases of a casualty. */
final class PhaseReader {
  private static final Shape WAY_OUT =
      Shape.of(
          "a way out of a phase",
          Key.must("to", Form.ID, "the next phase"),
          Key.may("after", Form.AMOUNT, "how long after the phase began"),
          Key.may("when", Form.CONDITION, "when it is taken"));

  static final Shape SHAPE =
      Shape.of(
          "a phase",
          Key.must("id", Form.ID, "its id"),
          Key.may("do", Form.LIST, "what happens when it begins")
              .withShapes(PhaseActReader.shapes()),
          Key.may("next", Form.LIST, "the ways out of it, the first that is open wins")
              .with(WAY_OUT),
          Key.may("end", Form.TRUE_FALSE, "whether the drill ends here"));

  private final Scope scope;
  private final ConditionReader conditions;

  PhaseReader(Scope scope) {
    this.scope = scope;
    this.conditions = new ConditionReader(scope);
  }

  Optional<Phase> read(YamlNode node, Findings findings) {
    return MapNode.of(node, SHAPE, findings).flatMap(this::phase);
  }

  private Optional<Phase> phase(MapNode map) {
    Optional<String> id = map.get("id", Scalars::id);
    List<PhaseAct> acts = map.list("do", Limits.SCRIPT_ITEMS, new PhaseActReader(scope)::read);
    List<Phase.Transition> next = map.list("next", Limits.SCRIPT_ITEMS, this::wayOut);
    boolean isEnd = map.get("end", Scalars::trueOrFalse).orElse(false);
    if (isEnd && map.has("next")) {
      map.findings()
          .add(
              FindingId.END_GOES_ON,
              map.node("next").map(YamlNode::spot).orElse(map.spot()),
              "an end phase has ways out; none is ever taken",
              "Take out `end` or `next`.");
    }
    return id.map(i -> new Phase(i, acts, next, isEnd));
  }

  private Optional<Phase.Transition> wayOut(YamlNode node, Findings findings) {
    return MapNode.of(node, WAY_OUT, findings).flatMap(this::wayOut);
  }

  private Optional<Phase.Transition> wayOut(MapNode map) {
    Optional<String> to = map.get("to", scope.names().one(Named.PHASE));
    Optional<Amount> afterS = map.get("after", scope.amounts().time(1));
    Optional<When> when = map.get("when", conditions);
    boolean hasCause = !map.present(List.of("after", "when")).isEmpty();
    if (!hasCause) {
      map.findings()
          .add(
              FindingId.NO_CAUSE,
              map.spot(),
              "the way out says neither `after` what time nor `when` it is taken",
              "Add one of them.");
    }
    return to.filter(t -> hasCause).map(t -> new Phase.Transition(t, afterS, when));
  }
}
