package handwheel.reader;

import handwheel.diagnostics.NearestWords;
import handwheel.plant.Port;
import handwheel.plant.StateNames;
import handwheel.ship.Condition;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;

/** Reads initial conditions, each from its own file. All figures are SI. */
final class ConditionFile {
  static final Shape ENTRY =
      Shape.of(
          "an initial condition",
          Key.must("id", Form.ID, "its id"),
          Key.must("file", Form.FILE, "the file it stands in"));

  static final Shape SHAPE =
      Shape.of(
          "a condition's file",
          Header.key("condition"),
          Key.must("id", Form.ID, "the condition's id"),
          Key.must("states", Form.NAMED, "every continuous state of the plant, and flags"),
          Key.must("ports", Form.NAMED, "the ports that do not stand at nought"));

  private final Folder folder;
  private final StateNames names;

  ConditionFile(Folder folder, StateNames names) {
    this.folder = folder;
    this.names = names;
  }

  /** Reads one entry of the ship's list and the file behind it. */
  Optional<Condition> read(YamlNode node, Findings findings) {
    return MapNode.of(node, ENTRY, findings).flatMap(this::entry);
  }

  private Optional<Condition> entry(MapNode map) {
    Optional<String> id = map.get("id", Scalars::id);
    Optional<MapNode> file =
        map.get("file", folder::named)
            .flatMap(root -> Header.root(root, SHAPE, "condition", map.findings()));
    return id.flatMap(i -> file.flatMap(f -> condition(i, f)));
  }

  private Optional<Condition> condition(String id, MapNode file) {
    Optional<String> own = file.get("id", Scalars::id);
    if (own.filter(o -> !o.equals(id)).isPresent()) {
      file.findings()
          .add(
              FindingId.OTHER_CONDITION,
              file.node("id").map(YamlNode::spot).orElse(file.spot()),
              Say.quoted(own.orElseThrow())
                  + " stands here; the ship file calls it "
                  + Say.quoted(id),
              "Write the same id in both.");
    }
    Optional<SortedMap<String, Double>> states = file.get("states", this::states);
    Optional<SortedMap<Port, Double>> ports = file.get("ports", ConditionFile::ports);
    return All.there(states, ports)
        ? Optional.of(new Condition(id, states.orElseThrow(), ports.orElseThrow()))
        : Optional.empty();
  }

  private Optional<SortedMap<String, Double>> states(YamlNode node, Findings findings) {
    if (!(node instanceof YamlNode.Mapping mapping)) {
      Scalars.wrongForm(node, "a mapping of states", findings);
      return Optional.empty();
    }
    SortedMap<String, Double> states = new TreeMap<>();
    for (YamlNode.Entry entry : mapping.entries()) {
      Optional<Double> value = Scalars.number(entry.value(), findings);
      value.ifPresentOrElse(v -> states.put(entry.key().text(), v), findings::lose);
      checkName(entry.key(), findings);
    }
    List<String> misspelt =
        mapping.entries().stream().flatMap(e -> meant(e.key().text()).stream()).toList();
    names.continuous().stream()
        .filter(name -> mapping.at(name).isEmpty() && !misspelt.contains(name))
        .forEach(name -> missing(FindingId.MISSING_STATE, "state", name, node, findings));
    return Optional.of(states);
  }

  /** Returns the state an unknown name was most likely meant to be. */
  private Optional<String> meant(String name) {
    return names.all().contains(name)
        ? Optional.empty()
        : NearestWords.to(Say.shown(name), names.all()).stream().findFirst();
  }

  private void checkName(YamlNode.Scalar key, Findings findings) {
    if (!names.all().isEmpty() && !names.all().contains(key.text())) {
      findings.add(
          FindingId.UNKNOWN_STATE,
          key.spot(),
          Say.quoted(key.text()) + " is no state of the plant",
          Say.offer(key.text(), names.all()));
      findings.lose();
    }
  }

  private static Optional<SortedMap<Port, Double>> ports(YamlNode node, Findings findings) {
    if (!(node instanceof YamlNode.Mapping mapping)) {
      Scalars.wrongForm(node, "a mapping of ports", findings);
      return Optional.empty();
    }
    SortedMap<Port, Double> ports = new TreeMap<>();
    for (YamlNode.Entry entry : mapping.entries()) {
      OptionalDouble at =
          PortReader.port(entry.key(), findings)
              .map(p -> PortReader.barePosition(entry.value(), p, findings))
              .orElseGet(OptionalDouble::empty);
      Optional<Port> port = Port.ofId(entry.key().text());
      if (port.isPresent() && at.isPresent()) {
        ports.put(port.get(), at.getAsDouble());
      } else {
        findings.lose();
      }
    }
    fillUp(ports, mapping, findings);
    return Optional.of(ports);
  }

  /** Ports not named stand at nought, if they can. */
  private static void fillUp(
      SortedMap<Port, Double> ports, YamlNode.Mapping mapping, Findings findings) {
    for (Port port : List.of(Port.values())) {
      boolean isNamed = mapping.at(port.id()).isPresent();
      if (!isNamed && !port.accepts(0)) {
        missing(FindingId.MISSING_PORT, "port", port.id(), mapping, findings);
      } else if (!isNamed) {
        ports.put(port, 0.0);
      }
    }
  }

  private static void missing(
      FindingId id, String what, String name, YamlNode at, Findings findings) {
    findings.add(
        id, at.spot(), "the condition leaves out " + what + " " + Say.quoted(name), "Name it.");
    findings.lose();
  }
}
