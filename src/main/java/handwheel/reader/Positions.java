package handwheel.reader;

import handwheel.plant.Port;
import handwheel.units.Measure;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads where a port goes: a number, a word of a choice, or {@code setting}. */
final class Positions {
  private static final String SETTING = "setting";

  private Positions() {}

  /** Reads a position; empty inside means: to what is ordered. */
  static NodeReader<OptionalDouble> of(Port port) {
    return (node, findings) ->
        Scalars.scalar(node, "a position", findings).flatMap(s -> position(s, port, findings));
  }

  private static Optional<OptionalDouble> position(
      YamlNode.Scalar scalar, Port port, Findings findings) {
    String text = scalar.text();
    if (text.equals(SETTING)) {
      return Optional.of(OptionalDouble.empty());
    }
    int word = port.words().indexOf(text);
    OptionalDouble at = word >= 0 ? OptionalDouble.of(word) : figure(text, port);
    if (at.isPresent() && port.accepts(at.getAsDouble())) {
      return Optional.of(at);
    }
    findings.add(
        FindingId.BAD_POSITION,
        scalar.spot(),
        Say.quoted(text) + " is no position of port " + Say.quoted(port.id()),
        port.words().isEmpty()
            ? "It goes from " + Say.figure(port.min()) + " to " + Say.figure(port.max()) + "."
            : "Valid: " + Say.quoted(port.words()) + ".");
    return Optional.empty();
  }

  private static OptionalDouble figure(String text, Port port) {
    if (!port.words().isEmpty()) {
      return OptionalDouble.empty();
    }
    if (Scalars.isNumber(text)) {
      return OptionalDouble.of(Double.parseDouble(text));
    }
    Optional<Measure> m =
        Measure.parse(text).filter(x -> x.unit().dimension() == port.unit().dimension());
    return m.isPresent() ? OptionalDouble.of(m.get().si()) : OptionalDouble.empty();
  }
}
