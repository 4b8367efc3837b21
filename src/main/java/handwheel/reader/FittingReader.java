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
import java.util.SortedMap;
import java.util.TreeSet;

/** Reads fittings with their acts and controls. */
final class FittingReader {
  private static final Shape CONTROL =
      Shape.of(
          "a control",
          Key.must("at", Form.ID, "the place where it is worked"),
          Key.must("kind", Form.WORD, "how it is worked")
              .with(Arrays.stream(ControlKind.values()).map(ControlKind::word).toList()),
          Key.may("turns", Form.NUMBER, "turns from open to shut"),
          Key.must("time", Form.QUANTITY, "time from open to shut by one steady man"));

  static final Shape SHAPE =
      Shape.of(
          "a fitting",
          Key.must("id", Form.ID, "its id"),
          Key.must("name", Form.TEXT, "what people call it"),
          Key.may("port", Form.DOTTED_ID, "the plant's input it moves"),
          Key.may("kind", Form.WORD, "what can be done to it").with(FittingKind.words()),
          Key.may("acts", Form.NAMED, "what can be done to it, verb by verb"),
          Key.must("controls", Form.LIST, "where it is worked").with(CONTROL));

  private static final int MOST_TURNS = 1_000;
  private static final double SHORTEST_S = 0.1;
  private static final double LONGEST_S = 3_600;

  private final Names names;

  FittingReader(Names names) {
    this.names = names;
  }

  Optional<Fitting> read(YamlNode node, Findings findings) {
    return MapNode.of(node, SHAPE, findings).flatMap(this::fitting);
  }

  private Optional<Fitting> fitting(MapNode map) {
    Optional<String> id = map.get("id", Scalars::id);
    Optional<String> name = map.get("name", Scalars.text(Limits.NAME_CHARS));
    Optional<SortedMap<Verb, List<PortMove>>> acts = acts(map);
    List<Control> controls = map.list("controls", Limits.SHIP_ITEMS, this::control);
    checkControls(map, controls);
    return All.there(id, name, acts)
        ? Optional.of(
            new Fitting(id.orElseThrow(), name.orElseThrow(), acts.orElseThrow(), controls))
        : Optional.empty();
  }

  private static Optional<SortedMap<Verb, List<PortMove>>> acts(MapNode map) {
    Optional<Port> port = map.get("port", PortReader::port);
    if (map.has("kind") && map.has("acts")) {
      map.oneOf(List.of("kind", "acts"));
      return Optional.empty();
    }
    if (map.has("acts")) {
      return map.get("acts", new ActsReader(port)::read);
    }
    if (map.has("kind") && map.has("port")) {
      Optional<FittingKind> kind = map.word("kind").flatMap(FittingKind::ofWord);
      YamlNode at = map.node("port").orElseThrow();
      return kind.flatMap(k -> port.flatMap(p -> ActsReader.ofKind(k, p, at, map.findings())));
    }
    map.findings()
        .add(
            FindingId.NO_ACTS,
            map.spot(),
            "the fitting does not say what can be done to it",
            "Give it `port` and `kind`, or `acts`.");
    return Optional.empty();
  }

  private Optional<Control> control(YamlNode node, Findings findings) {
    return MapNode.of(node, CONTROL, findings).flatMap(this::control);
  }

  private Optional<Control> control(MapNode map) {
    Optional<String> at = map.get("at", names.one(Named.PLACE));
    Optional<ControlKind> kind = map.word("kind").flatMap(ControlKind::ofWord);
    double turns = map.get("turns", Scalars.number(0, MOST_TURNS)).orElse(0.0);
    Optional<Double> timeS = map.get("time", Measures.si(Wanted.TIME, SHORTEST_S, LONGEST_S));
    return All.there(at, kind, timeS)
        ? Optional.of(new Control(at.orElseThrow(), kind.orElseThrow(), turns, timeS.orElseThrow()))
        : Optional.empty();
  }

  private static void checkControls(MapNode map, List<Control> controls) {
    Optional<YamlNode> list = map.node("controls");
    if (list.filter(n -> n instanceof YamlNode.Items && n.items().isEmpty()).isPresent()) {
      map.findings()
          .add(
              FindingId.NO_CONTROL,
              list.get().spot(),
              "the fitting can be worked nowhere",
              "Give it at least one control.");
    }
    TreeSet<String> places = new TreeSet<>();
    for (Control control : controls) {
      if (!places.add(control.place())) {
        map.findings()
            .add(
                FindingId.TWO_CONTROLS,
                list.map(YamlNode::spot).orElse(map.spot()),
                "the fitting has two controls at " + Say.quoted(control.place()),
                "Keep one of them, or give the other its own place.");
      }
    }
  }
}
