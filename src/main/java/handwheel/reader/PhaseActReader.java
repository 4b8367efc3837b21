package handwheel.reader;

import handwheel.casualty.Amount;
import handwheel.casualty.PhaseAct;
import handwheel.plant.Port;
import handwheel.ship.Fitting;
import handwheel.ship.Place;
import handwheel.ship.PortMove;
import handwheel.ship.Verb;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads what happens when a phase begins. */
final class PhaseActReader {
  private static final List<String> SENSES =
      Arrays.stream(PhaseAct.Sense.values()).map(s -> s.name().toLowerCase(Locale.ROOT)).toList();

  private static final Shape LEAK =
      Shape.of(
          "a leak",
          Key.must("fault", Form.WORD, "`leak`").with(List.of("leak")),
          Key.must("id", Form.ID, "its id"),
          Key.must("at", Form.ID, "the place where it breaks"),
          Key.must("hole", Form.AMOUNT, "the bore of the hole"),
          Key.must("ramp", Form.AMOUNT, "how long it takes to open"));

  private static final Shape CUE =
      Shape.of(
              "a cue",
              Key.must("cue", Form.ID, "its id"),
              Key.must("text", Form.TEXT, "what is noticed"))
          .plus(SENSES.stream().map(s -> Key.may(s, Form.ID, "where it is " + s)).toList());

  private static final Shape OUTSIDE =
      Shape.of(
          "something done outside",
          Key.must("outside", Form.ID, "the fitting that is moved"),
          Key.must("to", Form.WORD, "where it goes"),
          Key.must("over", Form.AMOUNT, "how long it takes"));

  static final OneShapeOf SHAPES =
      OneShapeOf.of("an act of a phase", List.of("fault", "cue", "outside"), LEAK, CUE, OUTSIDE);

  /** A thousandth of an inch, m. */
  private static final double SMALLEST_M = 0.0254e-3;

  private final Scope scope;

  PhaseActReader(Scope scope) {
    this.scope = scope;
  }

  Optional<PhaseAct> read(YamlNode node, Findings findings) {
    return SHAPES
        .read(node, findings)
        .flatMap(
            map -> {
              if (node.at("fault").isPresent()) {
                return leak(map);
              }
              return node.at("cue").isPresent() ? cue(map) : outside(map);
            });
  }

  private Optional<PhaseAct> leak(MapNode map) {
    Optional<String> fault = map.word("fault");
    Optional<String> id = map.get("id", PhaseActReader::faultId);
    Optional<Place> place = map.get("at", this::leakPlace);
    Optional<Port> port = place.flatMap(Place::leakPort);
    double widestM = port.map(p -> 2 * StrictMath.sqrt(p.max() / StrictMath.PI)).orElse(1.0);
    Optional<Amount> hole = map.get("hole", scope.amounts().length(SMALLEST_M, widestM));
    Optional<Amount> ramp = map.get("ramp", scope.amounts().time(0));
    return All.there(fault, id, place, port, hole, ramp)
        ? Optional.of(
            new PhaseAct.Leak(
                id.orElseThrow(),
                place.orElseThrow().id(),
                port.orElseThrow(),
                hole.orElseThrow(),
                ramp.orElseThrow()))
        : Optional.empty();
  }

  /** A leak's flow is called by the leak's id, so that must not be the plant's own name of one. */
  private static Optional<String> faultId(YamlNode node, Findings findings) {
    Optional<String> id = Scalars.id(node, findings);
    boolean isTaken =
        id.filter(i -> GaugeReader.quantityIds().contains(ConditionReader.leakFlow(i))).isPresent();
    if (isTaken) {
      findings.add(
          FindingId.RESERVED_ID,
          node.spot(),
          Say.quoted(ConditionReader.leakFlow(id.orElseThrow())) + " is a true value of the plant",
          "Give the leak another id.");
    }
    return isTaken ? Optional.empty() : id;
  }

  private Optional<Place> leakPlace(YamlNode node, Findings findings) {
    Optional<Place> place =
        scope.names().one(Named.PLACE).read(node, findings).flatMap(scope.ship()::place);
    if (place.filter(p -> p.leakPort().isEmpty()).isPresent()) {
      List<String> others =
          scope.ship().places().stream()
              .filter(p -> p.leakPort().isPresent())
              .map(Place::id)
              .toList();
      findings.add(
          FindingId.NO_LEAK_PORT,
          node.spot(),
          "nothing can break at " + Say.quoted(place.get().id()) + " in this ship",
          others.isEmpty() ? "" : "Places where something can: " + Say.quoted(others) + ".");
      return Optional.empty();
    }
    return place;
  }

  private Optional<PhaseAct> cue(MapNode map) {
    Optional<String> id = map.get("cue", Scalars::id);
    Optional<String> text = map.get("text", Scalars.text(Limits.TEXT_CHARS));
    Optional<String> sense = map.oneOf(SENSES);
    Optional<String> where = sense.flatMap(s -> map.get(s, this::where));
    return All.there(id, text, where)
        ? Optional.of(
            new PhaseAct.Cue(
                id.orElseThrow(),
                sense(sense.orElseThrow()),
                where.orElseThrow(),
                text.orElseThrow()))
        : Optional.empty();
  }

  private static PhaseAct.Sense sense(String word) {
    return PhaseAct.Sense.valueOf(word.toUpperCase(Locale.ROOT));
  }

  private Optional<String> where(YamlNode node, Findings findings) {
    List<String> wide = new ArrayList<>(PlaceReader.zones());
    wide.add(PlaceReader.EVERYWHERE);
    return node instanceof YamlNode.Scalar s && wide.contains(s.text())
        ? Optional.of(s.text())
        : scope.names().one(Named.PLACE).read(node, findings);
  }

  private Optional<PhaseAct> outside(MapNode map) {
    Optional<Fitting> fitting =
        map.get("outside", scope.names().one(Named.FITTING)).flatMap(scope.ship()::fitting);
    Optional<PortMove> move = fitting.flatMap(f -> map.get("to", (n, r) -> move(n, f, r)));
    Optional<Amount> over = map.get("over", scope.amounts().time(0));
    return All.there(fitting, move, over)
        ? Optional.of(
            new PhaseAct.Outside(
                fitting.orElseThrow().id(),
                move.orElseThrow().port(),
                move.orElseThrow().to().orElseThrow(),
                over.orElseThrow()))
        : Optional.empty();
  }

  /** Reads where a fitting is moved to: by a verb of its own with one end, or to a setting. */
  private static Optional<PortMove> move(YamlNode node, Fitting fitting, Findings findings) {
    List<Verb> verbs =
        fitting.acts().keySet().stream().filter(v -> isOneFixedMove(fitting.moves(v))).toList();
    Optional<YamlNode.Scalar> to = Scalars.scalar(node, "where the fitting goes", findings);
    Optional<Verb> verb = to.flatMap(s -> Verb.ofWord(s.text())).filter(verbs::contains);
    if (to.isEmpty() || verb.isPresent()) {
      return verb.map(v -> fitting.moves(v).get(0));
    }
    Optional<PortMove> set = fitting.moves(Verb.SET).stream().findFirst();
    boolean isWord = Verb.ofWord(to.get().text()).isPresent() || set.isEmpty();
    if (isWord) {
      findings.add(
          FindingId.NO_SUCH_MOVE,
          node.spot(),
          Say.quoted(fitting.id()) + " cannot go to " + Say.quoted(to.get().text()),
          "It can be told: " + Say.quoted(verbs.stream().map(Verb::word).toList()) + ".");
      return Optional.empty();
    }
    return set.flatMap(
        m ->
            PortReader.position(node, m.port(), findings).stream()
                .mapToObj(at -> new PortMove(m.port(), OptionalDouble.of(at), 0))
                .findFirst());
  }

  private static boolean isOneFixedMove(List<PortMove> moves) {
    return moves.size() == 1 && moves.get(0).to().isPresent();
  }
}
