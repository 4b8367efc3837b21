package handwheel.reader;

import handwheel.plant.Port;
import handwheel.units.Dimension;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads ports of the plant and the positions they can stand in. */
final class PortReader {
  private PortReader() {}

  /** Reads a port by its name. */
  static Optional<Port> port(YamlNode node, Findings findings) {
    Optional<YamlNode.Scalar> name = Scalars.scalar(node, "a port of the plant", findings);
    Optional<Port> port = name.flatMap(s -> Port.ofId(s.text()));
    if (name.isPresent() && port.isEmpty()) {
      List<String> ids = Arrays.stream(Port.values()).map(Port::id).toList();
      findings.add(
          FindingId.UNKNOWN_PORT,
          node.spot(),
          Say.quoted(name.get().text()) + " is no port of the plant",
          Say.offer(name.get().text(), ids));
    }
    return port;
  }

  /** Reads a position of a port as a person writes it. */
  static OptionalDouble position(YamlNode node, Port port, Findings findings) {
    Optional<Double> position =
        switch (port.kind()) {
          case CHOICE -> choice(node, port, findings);
          case FRACTION, SWITCH -> Measures.si(Wanted.of(Dimension.FRACTION)).read(node, findings);
          case SETTING -> Measures.si(Wanted.of(port.unit().dimension())).read(node, findings);
        };
    return accepted(position, node, port, findings);
  }

  /** Reads a position of a port from a condition's file: a bare SI figure, or a choice's word. */
  static OptionalDouble barePosition(YamlNode node, Port port, Findings findings) {
    Optional<Double> position =
        port.kind() == Port.Kind.CHOICE
            ? choice(node, port, findings)
            : Scalars.number(node, findings);
    return accepted(position, node, port, findings);
  }

  private static Optional<Double> choice(YamlNode node, Port port, Findings findings) {
    return Scalars.word(node, port.words(), findings).map(w -> (double) port.words().indexOf(w));
  }

  private static OptionalDouble accepted(
      Optional<Double> position, YamlNode node, Port port, Findings findings) {
    if (position.isEmpty() || port.accepts(position.get())) {
      return position.map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
    }
    findings.add(
        FindingId.PORT_REFUSES,
        node.spot(),
        Say.quoted(node instanceof YamlNode.Scalar s ? s.text() : "")
            + " is no position of port "
            + Say.quoted(port.id())
            + ", which takes "
            + Say.figure(port.unit().fromSi(port.min()))
            + (port.kind() == Port.Kind.SWITCH ? " or " : " to ")
            + Say.figure(port.unit().fromSi(port.max()))
            + (port.kind() == Port.Kind.SETTING ? " " + port.unit().symbol() : ""),
        "");
    return OptionalDouble.empty();
  }
}
