package handwheel.reader;

import handwheel.casualty.Amount;
import handwheel.casualty.Phase;
import handwheel.casualty.PhaseAct;
import handwheel.casualty.When;
import handwheel.ship.Fitting;
import handwheel.ship.Place;
import handwheel.ship.PortMove;
import handwheel.ship.Verb;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Reads the phases of a casualty. */
final class PhaseReader {
  private static final List<String> ACTS = List.of("fault", "cue", "outside");
  private static final List<String> SENSES = List.of("heard", "seen", "felt", "told");
  private static final String EVERYWHERE = "everywhere";

  private static final Shape ACT =
      Shape.of(
          "what happens",
          Key.may("fault", Form.WORD, "something breaks").with(List.of("leak")),
          Key.may("cue", Form.ID, "something is noticed"),
          Key.may("outside", Form.ID, "somebody outside moves a fitting"),
          Key.may("id", Form.ID, "id of the fault"),
          Key.may("at", Form.ID, "where it leaks"),
          Key.may("hole", Form.AMOUNT, "bore of the hole"),
          Key.may("ramp", Form.AMOUNT, "time to open fully"),
          Key.may("heard", Form.ID, "by ear: place, zone or everywhere"),
          Key.may("seen", Form.ID, "by eye: place, zone or everywhere"),
          Key.may("felt", Form.ID, "on the skin: place, zone or everywhere"),
          Key.may("told", Form.ID, "by voice: place, zone or everywhere"),
          Key.may("text", Form.TEXT, "what is noticed"),
          Key.may("to", Form.WORD, "where the fitting goes").with(List.of("open", "shut")),
          Key.may("over", Form.AMOUNT, "how long it takes"));

  private static final Shape NEXT =
      Shape.of(
          "a way out",
          Key.must("to", Form.ID, "the next phase"),
          Key.may("after", Form.AMOUNT, "this long after entering"),
          Key.may("when", Form.CONDITION, "when this holds").with(WhenReader.WHEN));

  /** The keys of a phase. */
  static final Shape PHASE =
      Shape.of(
          "a phase",
          Key.must("id", Form.ID, "its id"),
          Key.may("do", Form.LIST, "what happens on entering").with(ACT),
          Key.may("next", Form.LIST, "the ways out").with(NEXT),
          Key.may("end", Form.TRUE_FALSE, "whether the drill ends here"));

  private final Lexicon lexicon;
  private final WhenReader when;

  PhaseReader(Lexicon lexicon) {
    this.lexicon = lexicon;
    this.when = new WhenReader(lexicon);
  }

  Optional<Phase> read(MapNode map) {
    Optional<String> id = map.get("id", Scalars::id);
    List<PhaseAct> acts = map.list("do", Limits.SCRIPT_ITEMS, MapNode.reader(ACT, this::act));
    List<Phase.Transition> next =
        map.list("next", Limits.SCRIPT_ITEMS, MapNode.reader(NEXT, this::next));
    boolean isEnd = map.get("end", Scalars::trueOrFalse).orElse(false);
    return id.map(i -> new Phase(i, acts, next, isEnd));
  }

  private Optional<Phase.Transition> next(MapNode map) {
    Optional<String> to = map.get("to", lexicon.phase());
    Optional<Amount> after = map.get("after", Amounts.of(Wanted.TIME, lexicon.variations()));
    Optional<When> holds = map.get("when", when.reader());
    if (!map.has("after") && !map.has("when")) {
      map.oneOf(List.of("after", "when"));
    }
    return to.map(t -> new Phase.Transition(t, after, holds));
  }

  private Optional<PhaseAct> act(MapNode map) {
    return map.oneOf(ACTS)
        .flatMap(
            kind ->
                switch (kind) {
                  case "fault" -> leak(map);
                  case "cue" -> cue(map);
                  default -> outside(map);
                });
  }

  private Optional<PhaseAct> leak(MapNode map) {
    map.word("fault");
    Optional<String> id = needed(map, "id", Scalars::id);
    Optional<Place> at = needed(map, "at", lexicon.place()).flatMap(lexicon::placeOf);
    Optional<Amount> hole = needed(map, "hole", Amounts.of(Wanted.LENGTH, lexicon.variations()));
    Amount ramp =
        map.get("ramp", Amounts.of(Wanted.TIME, lexicon.variations())).orElse(new Amount.Fixed(0));
    if (at.isPresent() && at.get().leakPort().isEmpty()) {
      map.findings()
          .add(
              FindingId.NO_LEAK_PLACE,
              map.node("at").orElseThrow().spot(),
              "nothing can leak at `" + at.get().id() + "`",
              "Places that can: " + Say.quoted(leakPlaces()) + ".");
      return Optional.empty();
    }
    if (id.isEmpty() || at.isEmpty() || hole.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new PhaseAct.Leak(
            id.get(), at.get().id(), at.get().leakPort().orElseThrow(), hole.get(), ramp));
  }

  private List<String> leakPlaces() {
    return lexicon.ship().places().stream()
        .filter(p -> p.leakPort().isPresent())
        .map(Place::id)
        .toList();
  }

  private Optional<PhaseAct> cue(MapNode map) {
    Optional<String> id = map.get("cue", Scalars::id);
    Optional<String> sense = map.oneOf(SENSES);
    List<String> where = new ArrayList<>(lexicon.placeIds());
    where.addAll(List.of(EVERYWHERE, "lower", "upper", "outside"));
    Optional<String> place =
        sense.flatMap(s -> map.get(s, Names.of("a place, a zone or `everywhere`", where)));
    Optional<String> text = needed(map, "text", Scalars.text(Limits.TEXT_CHARS));
    if (id.isEmpty() || place.isEmpty() || text.isEmpty()) {
      return Optional.empty();
    }
    PhaseAct.Sense by = PhaseAct.Sense.valueOf(sense.get().toUpperCase(Locale.ROOT));
    return Optional.of(new PhaseAct.Cue(id.get(), by, place.get(), text.get()));
  }

  private Optional<PhaseAct> outside(MapNode map) {
    Optional<Fitting> fitting =
        map.get("outside", lexicon.fitting()).flatMap(lexicon.ship()::fitting);
    Optional<String> to =
        map.has("to") ? map.word("to") : needed(map, "to", (n, f) -> Optional.<String>empty());
    Amount over =
        map.get("over", Amounts.of(Wanted.TIME, lexicon.variations())).orElse(new Amount.Fixed(0));
    Optional<PortMove> move =
        fitting.flatMap(
            f ->
                to.flatMap(
                    t -> f.moves(t.equals("open") ? Verb.OPEN : Verb.SHUT).stream().findFirst()));
    return move.map(
        m -> new PhaseAct.Outside(fitting.get().id(), m.port(), m.to().orElseThrow(), over));
  }

  private static <T> Optional<T> needed(MapNode map, String key, NodeReader<T> reader) {
    if (!map.has(key)) {
      map.oneOf(List.of(key));
      return Optional.empty();
    }
    return map.get(key, reader);
  }
}
