package handwheel.reader;

import handwheel.plant.Plant;
import handwheel.plant.PlantNumbers;
import handwheel.plant.Port;
import handwheel.ship.Condition;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** Reads an initial condition: every continuous state, flags that are not 0, ports. */
final class ConditionFileReader {
  private static final List<String> PORTS = Arrays.stream(Port.values()).map(Port::id).toList();
  private static final Plant PLANT = Plant.of(PlantNumbers.usual());

  private static final Shape STATES =
      new Shape(
          "the states",
          PLANT.states().stream().map(s -> Key.may(s, Form.NUMBER, "a state, SI")).toList());

  private static final Shape PORT_POSITIONS =
      new Shape(
          "the ports",
          PORTS.stream().map(p -> Key.may(p, Form.POSITION, "where the port stands")).toList());

  private static final Shape FILE =
      Shape.of(
          "a condition",
          Header.key(),
          Key.must("id", Form.ID, "its id"),
          Key.must("states", Form.MAPPING, "the plant's states").with(STATES),
          Key.must("ports", Form.MAPPING, "the plant's ports").with(PORT_POSITIONS));

  private final Findings findings;

  ConditionFileReader(Findings findings) {
    this.findings = findings;
  }

  Optional<Condition> read(YamlNode node, String id) {
    return MapNode.of(node, FILE, findings).flatMap(m -> file(m, id));
  }

  private Optional<Condition> file(MapNode map, String id) {
    Header.check(map, "condition");
    map.get("id", Names.of("the condition's id", List.of(id)));
    Optional<SortedMap<String, Double>> states =
        map.get("states", MapNode.reader(STATES, ConditionFileReader::states));
    Optional<SortedMap<Port, Double>> ports =
        map.get("ports", MapNode.reader(PORT_POSITIONS, ConditionFileReader::ports));
    if (states.isEmpty() || ports.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(new Condition(id, states.get(), ports.get()));
  }

  private static Optional<SortedMap<String, Double>> states(MapNode map) {
    SortedMap<String, Double> states = new TreeMap<>();
    for (String name : map.present(PLANT.states())) {
      map.get(name, Scalars::number).ifPresent(v -> states.put(name, v));
    }
    List<String> missing = PLANT.continuousStates().stream().filter(s -> !map.has(s)).toList();
    if (!missing.isEmpty()) {
      map.findings()
          .add(
              FindingId.MISSING_STATE,
              map.spot(),
              "states are missing: " + Say.quoted(missing),
              "A condition names every continuous state.");
      map.findings().lose();
    }
    return Optional.of(states);
  }

  private static Optional<SortedMap<Port, Double>> ports(MapNode map) {
    SortedMap<Port, Double> ports = new TreeMap<>();
    for (String id : map.present(PORTS)) {
      Port port = Port.ofId(id).orElseThrow();
      map.get(id, Positions.of(port))
          .filter(p -> p.isPresent())
          .ifPresent(p -> ports.put(port, p.getAsDouble()));
    }
    return Optional.of(ports);
  }
}
