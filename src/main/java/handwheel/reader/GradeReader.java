package handwheel.reader;

import handwheel.casualty.Basis;
import handwheel.casualty.Grade;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Reads what a step or a rule is worth, and why. */
final class GradeReader {
  private static final Pattern RULE = Pattern.compile("[ON]\\d{1,2}");
  private static final List<String> BASES = Arrays.stream(Basis.values()).map(Basis::word).toList();

  /** The keys of a grade. */
  static final List<Key> KEYS =
      List.of(
          Key.must("points", Form.WHOLE, "what it is worth"),
          Key.may("critical", Form.TRUE_FALSE, "whether missing it fails the run"),
          Key.may("basis", Form.WORD, "ground of the charge").with(BASES),
          Key.may("rule", Form.RULE, "the trade rule behind it"),
          Key.must("why", Form.TEXT, "the reason, for people"));

  private GradeReader() {}

  static Optional<Grade> read(MapNode map) {
    Optional<Integer> points = map.get("points", Scalars.whole(0, 100));
    boolean isCritical = map.get("critical", Scalars::trueOrFalse).orElse(false);
    Basis basis = map.word("basis").flatMap(Basis::ofWord).orElse(Basis.TRADE_RULE);
    String rule = map.get("rule", GradeReader::rule).orElse("");
    Optional<String> why = map.get("why", Scalars.text(Limits.TEXT_CHARS));
    if (isCritical && basis == Basis.MODEL_ONLY) {
      map.findings()
          .add(
              FindingId.MODEL_ONLY_CRITICAL,
              map.spot(),
              "a charge on a figure of the model alone is critical",
              "Take `critical` away, or name the trade rule or ship's figure it rests on.");
    }
    return points.flatMap(p -> why.map(w -> new Grade(p, isCritical, basis, rule, w, map.spot())));
  }

  /** Reads a trade rule's number. */
  static Optional<String> rule(YamlNode node, Findings findings) {
    Optional<YamlNode.Scalar> scalar = Scalars.scalar(node, "a trade rule", findings);
    boolean isRule = scalar.filter(s -> RULE.matcher(s.text()).matches()).isPresent();
    if (scalar.isPresent() && !isRule) {
      findings.add(
          FindingId.NOT_A_RULE,
          node.spot(),
          Say.quoted(scalar.get().text()) + " stands here where a trade rule was expected",
          "Write such as `O2` or `N3`.");
    }
    return isRule ? scalar.map(YamlNode.Scalar::text) : Optional.empty();
  }
}
