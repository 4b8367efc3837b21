package handwheel.reader;

import handwheel.casualty.Caution;
import java.util.List;
import java.util.Optional;

/** Reads cautions. */
final class CautionReader {
  static final Shape SHAPE =
      Shape.of(
          "a caution",
          Key.must("id", Form.ID, "its id"),
          Key.must("signal", Form.WORD, "how bad it is")
              .with(List.of("DANGER", "WARNING", "CAUTION")),
          Key.must("hazard", Form.TEXT, "what it is"),
          Key.must("consequence", Form.TEXT, "what it does"),
          Key.may("avoid", Form.TEXT, "how to stay clear of it"),
          Key.must("before", Form.IDS, "the steps it belongs to"));

  private final Names names;

  CautionReader(Names names) {
    this.names = names;
  }

  Optional<Caution> read(YamlNode node, Findings findings) {
    return MapNode.of(node, SHAPE, findings).flatMap(this::caution);
  }

  private Optional<Caution> caution(MapNode map) {
    NodeReader<String> text = Scalars.text(Limits.TEXT_CHARS);
    Optional<String> id = map.get("id", Scalars::id);
    Optional<String> signal = map.word("signal");
    Optional<String> hazard = map.get("hazard", text);
    Optional<String> consequence = map.get("consequence", text);
    String avoid = map.get("avoid", text).orElse("");
    Optional<List<String>> before = map.get("before", Scalars.ids(names.one(Named.STEP)));
    if (!map.has("avoid")) {
      map.findings()
          .add(
              FindingId.CAUTION_WITHOUT_AVOID,
              map.spot(),
              "the caution does not say how to stay clear of the hazard",
              "Add `avoid:` with what a person does to stay clear.");
    }
    return All.there(id, signal, hazard, consequence, before)
        ? Optional.of(
            new Caution(
                id.orElseThrow(),
                signal.orElseThrow(),
                hazard.orElseThrow(),
                consequence.orElseThrow(),
                avoid,
                before.orElseThrow(),
                map.spot()))
        : Optional.empty();
  }
}
