package handwheel.reader;

import handwheel.casualty.Amount;
import handwheel.casualty.PhaseAct;
import handwheel.ship.Fitting;
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

  /** Any fault: what all of them have, to tell them from other acts. */
  private static final Shape FAULT =
      Shape.of(
          "a fault",
          Key.must("fault", Form.WORD, "what fails").with(List.copyOf(FaultReader.SHAPES.keySet())),
          Key.must("id", Form.ID, "its id"));

  private static final Shape MENDED =
      Shape.of(
          "a fault that goes",
          Key.must("mend", Form.ID, "the fault's id"),
          Key.may("over", Form.AMOUNT, "how long it takes to go"));

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
      OneShapeOf.of(
          "an act of a phase",
          List.of("fault", "mend", "cue", "outside"),
          FAULT,
          MENDED,
          CUE,
          OUTSIDE);

  private final Scope scope;

  PhaseActReader(Scope scope) {
    this.scope = scope;
  }

  /** Returns the mapping of every act, each kind of fault by itself. */
  static List<Shape> shapes() {
    List<Shape> shapes = new ArrayList<>(FaultReader.SHAPES.values());
    shapes.addAll(List.of(MENDED, CUE, OUTSIDE));
    return shapes;
  }

  Optional<PhaseAct> read(YamlNode node, Findings findings) {
    List<String> others = List.of("mend", "cue", "outside");
    boolean isFault =
        node.at("fault").isPresent() && others.stream().noneMatch(k -> node.at(k).isPresent());
    if (isFault) {
      return new FaultReader(scope).read(node, findings).map(f -> f);
    }
    return SHAPES
        .read(node, findings)
        .flatMap(
            map -> {
              if (node.at("mend").isPresent()) {
                return mended(map);
              }
              return node.at("cue").isPresent() ? cue(map) : outside(map);
            });
  }

  private Optional<PhaseAct> mended(MapNode map) {
    Optional<String> fault = map.get("mend", scope.names().one(Named.FAULT));
    Optional<Amount> over =
        map.has("over")
            ? map.get("over", scope.amounts().time(0))
            : Optional.of(new Amount.Fixed(0));
    return All.there(fault, over)
        ? Optional.of(new PhaseAct.Mended(fault.orElseThrow(), over.orElseThrow()))
        : Optional.empty();
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
