package handwheel.reader;

import handwheel.plant.Port;
import handwheel.ship.Control;
import handwheel.ship.ControlKind;
import handwheel.ship.Fitting;
import handwheel.ship.PortMove;
import handwheel.ship.Verb;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;

/** Reads one fitting of a ship: a kind stands for the usual acts, {@code acts} spells them out. */
final class FittingReader {
  private static final List<String> PORTS = Arrays.stream(Port.values()).map(Port::id).toList();
  private static final List<String> VERBS = Arrays.stream(Verb.values()).map(Verb::word).toList();
  private static final List<String> KINDS =
      Arrays.stream(ControlKind.values()).map(ControlKind::word).toList();
  private static final List<String> USUAL =
      List.of("valve", "switch-valve", "trip", "machine", "tripped-machine", "setting");

  private static final Shape MOVE =
      Shape.of(
          "a move",
          Key.must("port", Form.DOTTED_ID, "the plant's input"),
          Key.must("to", Form.POSITION, "where it goes"),
          Key.may("after", Form.TIME, "how long after the hand is on it"));

  private static final Shape CONTROL =
      Shape.of(
          "a control",
          Key.must("at", Form.ID, "the place"),
          Key.must("kind", Form.WORD, "how it is worked").with(KINDS),
          Key.may("turns", Form.NUMBER, "turns from open to shut"),
          Key.must("time", Form.TIME, "time from open to shut"));

  private static final Shape ACTS =
      new Shape(
          "the acts",
          VERBS.stream().map(v -> Key.may(v, Form.POSITION, "what " + v + " does")).toList());

  /** The keys of a fitting. */
  static final Shape FITTING =
      Shape.of(
          "a fitting",
          Key.must("id", Form.ID, "its id"),
          Key.must("name", Form.TEXT, "what people call it"),
          Key.may("port", Form.DOTTED_ID, "the plant's input it moves"),
          Key.may("kind", Form.WORD, "the usual acts").with(USUAL),
          Key.may("acts", Form.MAPPING, "what each verb does").with(ACTS),
          Key.must("controls", Form.LIST, "where it is worked").with(CONTROL));

  private final List<String> places;

  FittingReader(List<String> places) {
    this.places = places;
  }

  Optional<Fitting> read(MapNode map) {
    Optional<String> id = map.get("id", Scalars::id);
    Optional<String> name = map.get("name", Scalars.text(Limits.NAME_CHARS));
    Optional<Port> port = map.get("port", FittingReader::port);
    SortedMap<Verb, List<PortMove>> acts = new TreeMap<>();
    map.word("kind").ifPresent(kind -> acts.putAll(usual(kind, port)));
    map.get("acts", MapNode.reader(ACTS, m -> acts(m, port))).ifPresent(acts::putAll);
    List<Control> controls =
        map.list("controls", Limits.SCRIPT_ITEMS, MapNode.reader(CONTROL, this::control));
    if (id.isEmpty() || name.isEmpty() || controls.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(new Fitting(id.get(), name.get(), acts, controls));
  }

  private static Optional<Port> port(YamlNode node, Findings findings) {
    return Names.of("a port of the plant", PORTS).read(node, findings).flatMap(Port::ofId);
  }

  private static SortedMap<Verb, List<PortMove>> usual(String kind, Optional<Port> port) {
    SortedMap<Verb, List<PortMove>> acts = new TreeMap<>();
    if (port.isEmpty()) {
      return acts;
    }
    switch (kind) {
      case "valve" -> {
        put(acts, Verb.OPEN, port.get(), OptionalDouble.of(1));
        put(acts, Verb.SHUT, port.get(), OptionalDouble.of(0));
        put(acts, Verb.SET, port.get(), OptionalDouble.empty());
      }
      case "switch-valve" -> {
        put(acts, Verb.OPEN, port.get(), OptionalDouble.of(1));
        put(acts, Verb.SHUT, port.get(), OptionalDouble.of(0));
      }
      case "trip" -> {
        put(acts, Verb.TRIP, port.get(), OptionalDouble.of(0));
        put(acts, Verb.RESET, port.get(), OptionalDouble.of(1));
      }
      case "machine", "tripped-machine" -> {
        put(acts, Verb.START, port.get(), OptionalDouble.of(1));
        put(acts, Verb.STOP, port.get(), OptionalDouble.of(0));
        if (kind.equals("tripped-machine")) {
          put(acts, Verb.TRIP, port.get(), OptionalDouble.of(0));
        }
      }
      default -> put(acts, Verb.SET, port.get(), OptionalDouble.empty());
    }
    return acts;
  }

  private static void put(
      SortedMap<Verb, List<PortMove>> acts, Verb verb, Port port, OptionalDouble to) {
    acts.put(verb, List.of(new PortMove(port, to, 0)));
  }

  private static Optional<SortedMap<Verb, List<PortMove>>> acts(MapNode map, Optional<Port> port) {
    SortedMap<Verb, List<PortMove>> acts = new TreeMap<>();
    for (String verb : map.present(VERBS)) {
      map.get(verb, (n, f) -> moves(n, port, f))
          .ifPresent(m -> acts.put(Verb.ofWord(verb).orElseThrow(), m));
    }
    return Optional.of(acts);
  }

  private static Optional<List<PortMove>> moves(
      YamlNode node, Optional<Port> port, Findings findings) {
    if (node instanceof YamlNode.Items) {
      return Scalars.list(
          node, Limits.SCRIPT_ITEMS, MapNode.reader(MOVE, FittingReader::move), findings);
    }
    if (port.isEmpty()) {
      findings.add(
          FindingId.MISSING_KEY,
          node.spot(),
          "a position alone needs the fitting's `port`",
          "Name the port, or write a list of moves.");
      return Optional.empty();
    }
    return Positions.of(port.get())
        .read(node, findings)
        .map(to -> List.of(new PortMove(port.get(), to, 0)));
  }

  private static Optional<PortMove> move(MapNode map) {
    Optional<Port> port = map.get("port", FittingReader::port);
    double afterS = map.get("after", Measures.wholeTicksS(0)).orElse(0.0);
    return port.flatMap(p -> map.get("to", Positions.of(p)).map(to -> new PortMove(p, to, afterS)));
  }

  private Optional<Control> control(MapNode map) {
    Optional<String> at = map.get("at", Names.of("a place", places));
    Optional<ControlKind> kind = map.word("kind").flatMap(ControlKind::ofWord);
    double turns = map.get("turns", Scalars::number).orElse(0.0);
    Optional<Double> timeS = map.get("time", Measures.wholeTicksS(1));
    if (at.isEmpty() || kind.isEmpty() || timeS.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(new Control(at.get(), kind.get(), turns, timeS.get()));
  }
}
