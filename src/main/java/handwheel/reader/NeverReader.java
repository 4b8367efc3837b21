package handwheel.reader;

import handwheel.casualty.Grade;
import handwheel.casualty.Never;
import handwheel.casualty.OutcomeRule;
import handwheel.casualty.When;
import handwheel.ship.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Reads forbidden acts and what outcomes cost. */
final class NeverReader {
  private static final String ANYONE = "anyone";
  private static final List<String> ZONES = List.of("lower", "upper");

  /** The keys of a forbidden act. */
  static final Shape NEVER =
      Shape.of(
              "a never",
              Key.must("id", Form.ID, "its id"),
              Key.may("moving", Form.ID, "a fitting that must not move"),
              Key.may("toward", Form.WORD, "which way").with(List.of("open", "shut")),
              Key.may("send", Form.ID, "who must not be sent, or anyone"),
              Key.may("to", Form.IDS, "where to: places or zones"),
              Key.must("while", Form.CONDITION, "while this holds").with(WhenReader.WHEN))
          .plus(GradeReader.KEYS);

  /** The keys of an outcome. */
  static final Shape OUTCOME =
      Shape.of(
              "an outcome",
              Key.must("people", Form.WORD, "how badly hurt").with(List.of("hurt", "down")),
              Key.must("above", Form.WHOLE, "charged when more than this are"))
          .plus(GradeReader.KEYS);

  private final Lexicon lexicon;

  NeverReader(Lexicon lexicon) {
    this.lexicon = lexicon;
  }

  Optional<Never> never(MapNode map) {
    Optional<String> id = map.get("id", Scalars::id);
    Optional<Never.Act> act =
        map.oneOf(List.of("moving", "send"))
            .flatMap(kind -> kind.equals("moving") ? moving(map) : sending(map));
    Optional<When> during = map.get("while", new WhenReader(lexicon).reader());
    Optional<Grade> grade = GradeReader.read(map);
    if (id.isEmpty() || act.isEmpty() || during.isEmpty() || grade.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(new Never(id.get(), act.get(), during.get(), grade.get()));
  }

  private Optional<Never.Act> moving(MapNode map) {
    Optional<String> fitting = map.get("moving", lexicon.fitting());
    Optional<String> toward = map.oneOf(List.of("toward")).flatMap(k -> map.word(k));
    return fitting.flatMap(f -> toward.map(t -> new Never.Moving(f, t.equals("open"))));
  }

  private Optional<Never.Act> sending(MapNode map) {
    List<String> whoever = new ArrayList<>(lexicon.whoIds());
    whoever.add(ANYONE);
    Optional<String> who = map.get("send", Names.of("a watchstander or `anyone`", whoever));
    List<String> where = new ArrayList<>(lexicon.placeIds());
    where.addAll(ZONES);
    Optional<List<String>> to =
        map.oneOf(List.of("to"))
            .flatMap(k -> map.get(k, Scalars.ids(Names.of("a place or a zone", where))));
    return who.flatMap(w -> to.map(t -> new Never.Sending(w, places(t))));
  }

  private List<String> places(List<String> named) {
    List<String> places = new ArrayList<>();
    for (String name : named) {
      if (ZONES.contains(name)) {
        lexicon.ship().places().stream()
            .filter(p -> p.zone().name().toLowerCase(Locale.ROOT).equals(name))
            .map(Place::id)
            .forEach(places::add);
      } else {
        places.add(name);
      }
    }
    return places.stream().distinct().toList();
  }

  static Optional<OutcomeRule> outcome(MapNode map) {
    Optional<OutcomeRule.Harm> harm =
        map.word("people").map(h -> OutcomeRule.Harm.valueOf(h.toUpperCase(Locale.ROOT)));
    Optional<Integer> above = map.get("above", Scalars.whole(0, 100));
    Optional<Grade> grade = GradeReader.read(map);
    if (harm.isEmpty() || above.isEmpty() || grade.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(new OutcomeRule(harm.get(), above.get(), grade.get()));
  }
}
