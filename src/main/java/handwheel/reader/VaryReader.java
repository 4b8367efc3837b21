package handwheel.reader;

import handwheel.casualty.Variation;
import handwheel.units.Measure;
import handwheel.units.Unit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Reads what is drawn for each run. */
final class VaryReader {
  static final Shape SHAPE =
      Shape.of(
          "a variation",
          Key.must("from", Form.QUANTITY, "its lower end"),
          Key.must("to", Form.QUANTITY, "its higher end"));

  private static final Wanted ANY =
      new Wanted(
          "a figure with its unit",
          Arrays.stream(Unit.values()).filter(u -> u != Unit.ONE).toList());

  private VaryReader() {}

  /** Reads a mapping of names. */
  static Optional<List<Variation>> read(YamlNode node, Findings findings) {
    if (!(node instanceof YamlNode.Mapping mapping)) {
      Scalars.wrongForm(node, "a mapping of names", findings);
      return Optional.empty();
    }
    List<Variation> variations = new ArrayList<>();
    for (YamlNode.Entry entry : mapping.entries()) {
      Optional<Variation> read = Optional.empty();
      if (Scalars.isId(entry.key(), findings)) {
        read =
            MapNode.of(entry.value(), SHAPE, findings)
                .flatMap(m -> variation(entry.key().text(), m));
      }
      read.ifPresentOrElse(variations::add, findings::lose);
    }
    return Optional.of(variations);
  }

  private static Optional<Variation> variation(String name, MapNode map) {
    Optional<Measure> from = map.get("from", Measures.measure(ANY));
    Optional<Measure> to =
        map.get("to", Measures.measure(from.map(m -> Wanted.of(m.unit().dimension())).orElse(ANY)));
    if (!All.there(from, to)) {
      return Optional.empty();
    }
    Measure low = from.orElseThrow();
    double highSi = to.orElseThrow().si();
    if (low.si() < highSi) {
      return Optional.of(new Variation(name, low.si(), highSi, low.unit()));
    }
    map.findings()
        .add(
            FindingId.BAD_RANGE,
            map.spot(),
            "`from` is not below `to`",
            "A figure that does not vary is written where it is used.");
    return Optional.empty();
  }
}
