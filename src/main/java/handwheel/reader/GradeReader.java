package handwheel.reader;

import handwheel.casualty.Basis;
import handwheel.casualty.Grade;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Reads what a step or a rule is worth and on what ground. */
final class GradeReader {
  static final List<Key> KEYS =
      List.of(
          Key.must("points", Form.WHOLE, "what it is worth"),
          Key.may("critical", Form.TRUE_FALSE, "whether missing it fails the run"),
          Key.must("basis", Form.WORD, "on what ground")
              .with(Arrays.stream(Basis.values()).map(Basis::word).toList()),
          Key.may("rule", Form.RULE, "the trade rule behind it"),
          Key.may("why", Form.TEXT, "the reason, for people"));

  static final Pattern RULE = Pattern.compile("[ON][1-9][0-9]?");
  private static final int ALL_POINTS = 100;

  private GradeReader() {}

  /** Reads the grade out of the mapping it stands in. */
  static Optional<Grade> read(MapNode map) {
    Optional<Integer> points = map.get("points", Scalars.whole(0, ALL_POINTS));
    boolean isCritical = map.get("critical", Scalars::trueOrFalse).orElse(false);
    Optional<Basis> basis = map.word("basis").flatMap(Basis::ofWord);
    String rule = map.get("rule", GradeReader::rule).orElse("");
    String why = map.get("why", Scalars.text(Limits.TEXT_CHARS)).orElse("");
    if (isCritical) {
      checkCritical(map, basis);
    }
    return All.there(points, basis)
        ? Optional.of(
            new Grade(points.orElseThrow(), isCritical, basis.orElseThrow(), rule, why, map.spot()))
        : Optional.empty();
  }

  /** Reads the number of a trade rule. */
  static Optional<String> rule(YamlNode node, Findings findings) {
    Optional<YamlNode.Scalar> rule = Scalars.scalar(node, "a trade rule", findings);
    if (rule.isEmpty() || RULE.matcher(rule.get().text()).matches()) {
      return rule.map(YamlNode.Scalar::text);
    }
    findings.add(
        FindingId.NOT_A_RULE,
        node.spot(),
        Say.quoted(rule.get().text()) + " stands here where a trade rule was expected",
        "Write such as `O2` for an order of acts or `N3` for a forbidden act.");
    return Optional.empty();
  }

  private static void checkCritical(MapNode map, Optional<Basis> basis) {
    if (!map.has("why")) {
      map.findings()
          .add(
              FindingId.CRITICAL_WITHOUT_WHY,
              map.spot(),
              "this is critical and gives no reason",
              "Add `why:`; whoever fails on it must be told.");
    }
    if (basis.filter(b -> b == Basis.MODEL_ONLY).isPresent()) {
      map.findings()
          .add(
              FindingId.MODEL_ONLY_CRITICAL,
              map.node("basis").map(YamlNode::spot).orElse(map.spot()),
              "`model-only` cannot be the ground of a critical charge",
              "Find a trade rule or a figure of the ship, or take `critical` out.");
    }
  }
}
