package handwheel.reader;

import handwheel.plant.Port;
import handwheel.ship.PortMove;
import handwheel.ship.Verb;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;

/** Reads what can be done to a fitting: verb by verb, or by its kind. */
final class ActsReader {
  private static final String SETTING = "setting";

  private static final Shape MOVE =
      Shape.of(
          "a move",
          Key.must("port", Form.DOTTED_ID, "the plant's input"),
          Key.must("to", Form.POSITION, "where it goes, or `setting`"),
          Key.may("after", Form.TIME, "how long after the hand is on it"));

  private final Optional<Port> port;

  /** Makes a reader of acts on a port, if the fitting has one of its own. */
  ActsReader(Optional<Port> port) {
    this.port = port;
  }

  /** Returns the acts of a kind of fitting. */
  static Optional<SortedMap<Verb, List<PortMove>>> ofKind(
      FittingKind kind, Port port, YamlNode at, Findings findings) {
    SortedMap<Verb, List<PortMove>> acts = new TreeMap<>();
    for (FittingKind.Act act : kind.acts()) {
      int to = act.to();
      if (to >= 0 && (port.kind() == Port.Kind.CHOICE || !port.accepts(to))) {
        findings.add(
            FindingId.WRONG_PORT,
            at.spot(),
            "port " + Say.quoted(port.id()) + " cannot be that of " + Say.a(kind.word()),
            "Write its `acts` one by one.");
        return Optional.empty();
      }
      acts.put(
          act.verb(),
          List.of(move(port, to < 0 ? OptionalDouble.empty() : OptionalDouble.of(to), 0)));
    }
    return Optional.of(acts);
  }

  /** Reads a mapping of verbs. */
  Optional<SortedMap<Verb, List<PortMove>>> read(YamlNode node, Findings findings) {
    if (!(node instanceof YamlNode.Mapping mapping)) {
      Scalars.wrongForm(node, "a mapping of verbs", findings);
      return Optional.empty();
    }
    SortedMap<Verb, List<PortMove>> acts = new TreeMap<>();
    for (YamlNode.Entry entry : mapping.entries()) {
      Optional<Verb> verb = verb(entry.key(), findings);
      Optional<List<PortMove>> moves = moves(entry.value(), findings);
      if (All.there(verb, moves)) {
        acts.put(verb.orElseThrow(), moves.orElseThrow());
      } else {
        findings.lose();
      }
    }
    return Optional.of(acts);
  }

  private static Optional<Verb> verb(YamlNode.Scalar key, Findings findings) {
    List<String> words = Arrays.stream(Verb.values()).map(Verb::word).toList();
    return Scalars.word(key, words, findings).flatMap(Verb::ofWord);
  }

  private Optional<List<PortMove>> moves(YamlNode node, Findings findings) {
    if (node instanceof YamlNode.Items) {
      return Scalars.list(
          node, Limits.SCRIPT_ITEMS, MapNode.reader(MOVE, ActsReader::move), findings);
    }
    if (port.isEmpty()) {
      findings.add(
          FindingId.NO_ACTS,
          node.spot(),
          "the fitting has no `port` of its own that could be moved",
          "Give it a `port`, or write the moves as a list of {port, to}.");
      return Optional.empty();
    }
    return to(node, port.get(), findings).map(to -> List.of(move(port.get(), to, 0)));
  }

  private static Optional<PortMove> move(MapNode map) {
    Optional<Port> port = map.get("port", PortReader::port);
    double afterS = map.get("after", Measures.wholeTicksS(0)).orElse(0.0);
    return port.flatMap(p -> map.get("to", (n, f) -> to(n, p, f)).map(to -> move(p, to, afterS)));
  }

  /** Reads where a port goes; the inner value is empty for what was ordered. */
  private static Optional<OptionalDouble> to(YamlNode node, Port port, Findings findings) {
    boolean isSetting = node instanceof YamlNode.Scalar s && s.text().equals(SETTING);
    OptionalDouble to =
        isSetting ? OptionalDouble.empty() : PortReader.position(node, port, findings);
    return isSetting || to.isPresent() ? Optional.of(to) : Optional.empty();
  }

  private static PortMove move(Port port, OptionalDouble to, double afterS) {
    return new PortMove(port, to, afterS);
  }
}
