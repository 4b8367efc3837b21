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
  private static final String OF = "of";

  static final OneShapeOf SHAPES =
      OneShapeOf.of(
          "a variation",
          List.of("from", OF),
          Shape.of(
              "a figure that varies",
              Key.must("from", Form.QUANTITY, "its lower end"),
              Key.must("to", Form.QUANTITY, "its higher end")),
          Shape.of(
              "a word that varies",
              Key.must(OF, Form.IDS, "the words, each as likely as another")));

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
            SHAPES
                .read(entry.value(), findings)
                .flatMap(m -> variation(entry.key().text(), entry.value().at(OF).isPresent(), m));
      }
      read.ifPresentOrElse(variations::add, findings::lose);
    }
    return Optional.of(variations);
  }

  private static Optional<Variation> variation(String name, boolean isOfWords, MapNode map) {
    return isOfWords ? words(name, map) : figure(name, map);
  }

  private static Optional<Variation> words(String name, MapNode map) {
    Optional<List<String>> words = map.get(OF, Scalars.ids(Scalars::id));
    if (words.filter(w -> w.stream().distinct().count() < 2).isPresent()) {
      map.findings()
          .add(
              FindingId.ONE_WORD,
              map.spot(),
              Say.quoted(name) + " draws from less than two words",
              "Name at least two, each once.");
      return Optional.empty();
    }
    return words.map(w -> Variation.of(name, w));
  }

  private static Optional<Variation> figure(String name, MapNode map) {
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
