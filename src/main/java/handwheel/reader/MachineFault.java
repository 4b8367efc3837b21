package handwheel.reader;

import handwheel.casualty.Fault;
import handwheel.casualty.FaultKind;
import handwheel.plant.Port;
import handwheel.units.Dimension;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How a script writes the fault of a machine: which of several, and how large.
 *
 * @param kind what fails and how
 * @param what the fault for people, with its article
 * @param which the key that tells which of several it is, without one there is only one
 * @param ports the port it moves by the word of that key; by an empty word if there is only one
 * @param size the key of its size; without one the port goes to its highest position
 * @param scale what the size means
 * @param also ports that go to their highest position beside it
 */
record MachineFault(
    FaultKind kind,
    String what,
    Optional<String> which,
    Map<String, Port> ports,
    Optional<String> size,
    Fault.Scale scale,
    List<Port> also) {
  private static final String HOLE = "hole";
  private static final String FLOW = "flow";
  private static final String SHARE = "share";

  /** A thousandth of an inch, m. */
  private static final double SMALLEST_M = 0.0254e-3;

  static final List<MachineFault> ALL =
      List.of(
          one(FaultKind.TUBE_RUPTURE, "a burst tube", Port.TUBE_RUPTURE).bore(),
          one(FaultKind.ECONOMIZER_LEAK, "a holed economizer", Port.ECONOMIZER_LEAK).bore(),
          each(FaultKind.BURNER_PLUGGED, "a plugged burner", "burner", fouling()).sized(SHARE),
          each(FaultKind.INTAKE_FLOODING, "a flooding intake", "blower", blowers("sea-water"))
              .sized(FLOW),
          each(FaultKind.FLAP_STUCK, "a stuck discharge flap", "blower", blowers("flap-stuck"))
              .sized(SHARE),
          each(FaultKind.BLOWER_TRIP, "a tripped blower", "blower", blowers("trip")),
          each(FaultKind.SUCTION_LOST, "a lost suction", "tank", tanks("tank-outlet-blocked."))
              .sized(SHARE),
          each(FaultKind.WATER_IN_OIL, "water in the oil", "tank", tanks("water-in-tank."))
              .sized(SHARE),
          one(FaultKind.STRAINER_FOULED, "a fouled strainer", Port.STRAINER).rest(),
          one(FaultKind.CONDENSER_LEAK, "a leaking condenser", Port.FEED_CHLORIDE)
              .sized("chloride"),
          each(FaultKind.SAFETY_STUCK, "a stuck safety valve", "valve", safeties()).sized("is"),
          each(FaultKind.SPRAY_LEAK, "an oil spray", "line", lines()).bore(),
          one(FaultKind.OIL_SPILL, "oil on the plates", Port.DECK_OIL).sized(FLOW),
          one(FaultKind.IGNITION, "something that lights oil", Port.IGNITION_SOURCE),
          one(FaultKind.FIRE, "a fire", Port.DECK_OIL).sized(FLOW).with(Port.IGNITION_SOURCE),
          one(FaultKind.FLOODING, "a flooding", Port.FLOODING).sized(FLOW),
          one(FaultKind.POWER_LOST, "a loss of electric power", Port.POWER_LOST),
          each(FaultKind.BRICKWORK_FAILED, "fallen brick", "side", sides()).sized(SHARE),
          one(FaultKind.DEAERATING_TANK_LOW, "a leaking deaerating tank", Port.DEAERATING_TANK_LOSS)
              .sized(FLOW),
          one(FaultKind.UPTAKE_FIRE, "a soot fire", Port.UPTAKE_FIRE).sized("soot"));

  MachineFault {
    also = List.copyOf(also);
  }

  private static MachineFault one(FaultKind kind, String what, Port port) {
    return new MachineFault(
        kind,
        what,
        Optional.empty(),
        ported(Map.entry("", port.id())),
        Optional.empty(),
        Fault.Scale.PLAIN,
        List.of());
  }

  private static MachineFault each(
      FaultKind kind, String what, String which, Map<String, Port> ports) {
    return new MachineFault(
        kind, what, Optional.of(which), ports, Optional.empty(), Fault.Scale.PLAIN, List.of());
  }

  private MachineFault sized(String key) {
    return new MachineFault(kind, what, which, ports, Optional.of(key), scale, also);
  }

  private MachineFault bore() {
    return scaled(HOLE, Fault.Scale.BORE);
  }

  private MachineFault rest() {
    return scaled(SHARE, Fault.Scale.REST);
  }

  private MachineFault scaled(String key, Fault.Scale by) {
    return new MachineFault(kind, what, which, ports, Optional.of(key), by, also);
  }

  private MachineFault with(Port port) {
    return new MachineFault(kind, what, which, ports, size, scale, List.of(port));
  }

  private static Map<String, Port> fouling() {
    Map<String, Port> ports = new LinkedHashMap<>();
    Arrays.stream(Port.values())
        .filter(p -> p.id().startsWith("fouling."))
        .forEach(p -> ports.put(p.id().substring("fouling.".length()), p));
    return ports;
  }

  private static Map<String, Port> blowers(String what) {
    return ported(Map.entry("1", "blower.1." + what), Map.entry("2", "blower.2." + what));
  }

  private static Map<String, Port> tanks(String prefix) {
    return ported(Map.entry("1", prefix + "1"), Map.entry("2", prefix + "2"));
  }

  private static Map<String, Port> safeties() {
    return ported(
        Map.entry("superheater", "safety.superheater.stuck"),
        Map.entry("drum-1", "safety.drum-1.stuck"),
        Map.entry("drum-2", "safety.drum-2.stuck"));
  }

  private static Map<String, Port> sides() {
    return ported(
        Map.entry("saturated", "brick-fallen.saturated"),
        Map.entry("superheater", "brick-fallen.superheater"));
  }

  private static Map<String, Port> lines() {
    Map<String, Port> ports = new LinkedHashMap<>();
    Port.OIL_SPRAY_PLACE.words().forEach(w -> ports.put(w, Port.OIL_SPRAY));
    return ports;
  }

  @SafeVarargs
  private static Map<String, Port> ported(Map.Entry<String, String>... ids) {
    Map<String, Port> ports = new LinkedHashMap<>();
    for (Map.Entry<String, String> id : ids) {
      ports.put(id.getKey(), Port.ofId(id.getValue()).orElseThrow());
    }
    return ports;
  }

  private Port anyPort() {
    return ports.values().iterator().next();
  }

  private boolean isGradual() {
    Port.Kind port = anyPort().kind();
    return port == Port.Kind.FRACTION || port == Port.Kind.SETTING;
  }

  private List<String> wordsOfSize() {
    List<String> words = anyPort().words();
    return words.isEmpty() ? words : words.subList(1, words.size());
  }

  /** Returns the mapping a script writes. */
  Shape shape() {
    List<Key> keys = new ArrayList<>();
    which.ifPresent(
        k -> keys.add(Key.must(k, Form.WORD, "which " + k).with(List.copyOf(ports.keySet()))));
    size.ifPresent(
        k ->
            keys.add(
                wordsOfSize().isEmpty()
                    ? Key.must(k, Form.AMOUNT, "how large")
                    : Key.must(k, Form.WORD, "how it sticks").with(wordsOfSize())));
    return FaultShapes.shape(
        what, kind.word(), keys, isGradual() ? FaultShapes.MAY_RAMP : Optional.empty());
  }

  /** Reads where the fault takes the plant's ports. */
  Optional<List<Fault.Aim>> aims(MapNode map, AmountReader amounts) {
    Optional<String> word = which.isPresent() ? map.word(which.get()) : Optional.of("");
    Optional<Port> port = word.flatMap(w -> Optional.ofNullable(ports.get(w)));
    Optional<Fault.Aim> aim =
        port.flatMap(
            p -> size.isEmpty() ? Optional.of(full(p)) : sized(p, size.get(), map, amounts));
    return aim.map(
        a -> {
          List<Fault.Aim> aims = new ArrayList<>(List.of(a));
          also.forEach(p -> aims.add(full(p)));
          if (a.port() == Port.OIL_SPRAY) {
            double index = Port.OIL_SPRAY_PLACE.words().indexOf(word.get());
            aims.add(FaultShapes.plain(Port.OIL_SPRAY_PLACE, index));
          }
          return aims;
        });
  }

  private static Fault.Aim full(Port port) {
    return FaultShapes.plain(port, port.max());
  }

  private Optional<Fault.Aim> sized(Port port, String key, MapNode map, AmountReader amounts) {
    if (!port.words().isEmpty()) {
      return map.word(key).map(w -> FaultShapes.plain(port, port.words().indexOf(w)));
    }
    NodeReader<handwheel.casualty.Amount> reader =
        scale == Fault.Scale.BORE
            ? amounts.length(SMALLEST_M, FaultShapes.widestM(port))
            : amounts.figure(dimension(port), port.min(), port.max());
    return map.get(key, reader).map(a -> new Fault.Aim(port, a, scale));
  }

  private static Wanted dimension(Port port) {
    return Wanted.of(
        port.kind() == Port.Kind.FRACTION ? Dimension.FRACTION : port.unit().dimension());
  }
}
