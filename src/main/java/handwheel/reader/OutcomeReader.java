package handwheel.reader;

import handwheel.casualty.Grade;
import handwheel.casualty.OutcomeRule;
import handwheel.casualty.When;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Reads outcomes that cost points. */
final class OutcomeReader {
  private static final int MOST_PEOPLE = 20;

  static final OneShapeOf SHAPES =
      OneShapeOf.of(
          "an outcome",
          List.of("people", "when"),
          Shape.of(
                  "an outcome for people",
                  Key.must("people", Form.WORD, "how badly people are hurt")
                      .with(List.of("hurt", "down")),
                  Key.must("above", Form.WHOLE, "charged when more than this many are"))
              .plus(GradeReader.KEYS),
          Shape.of(
                  "an outcome for the plant",
                  Key.must("id", Form.ID, "its id"),
                  Key.must("when", Form.CONDITION, "what must not come to pass"))
              .plus(GradeReader.KEYS));

  private final ConditionReader conditions;

  OutcomeReader(Scope scope) {
    this.conditions = new ConditionReader(scope);
  }

  Optional<OutcomeRule> read(YamlNode node, Findings findings) {
    boolean isOfPeople = node.at("people").isPresent();
    return SHAPES.read(node, findings).flatMap(map -> isOfPeople ? people(map) : came(map));
  }

  private static Optional<OutcomeRule> people(MapNode map) {
    Optional<OutcomeRule.Harm> harm =
        map.word("people").map(w -> OutcomeRule.Harm.valueOf(w.toUpperCase(Locale.ROOT)));
    Optional<Integer> above = map.get("above", Scalars.whole(0, MOST_PEOPLE));
    Optional<Grade> grade = GradeReader.read(map);
    return All.there(harm, above, grade)
        ? Optional.of(
            new OutcomeRule.People(harm.orElseThrow(), above.orElseThrow(), grade.orElseThrow()))
        : Optional.empty();
  }

  private Optional<OutcomeRule> came(MapNode map) {
    Optional<String> id = map.get("id", Scalars::id);
    Optional<When> when = map.get("when", conditions);
    Optional<Grade> grade = GradeReader.read(map);
    return All.there(id, when, grade)
        ? Optional.of(
            new OutcomeRule.Came(id.orElseThrow(), when.orElseThrow(), grade.orElseThrow()))
        : Optional.empty();
  }
}
