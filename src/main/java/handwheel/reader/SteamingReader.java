package handwheel.reader;

import handwheel.ship.SteamingWatch;
import java.util.List;
import java.util.Optional;

/** Reads what an ordinary watch is like. */
final class SteamingReader {
  private static final int MOST_DAYS = 3650;

  private static final Shape HAZARD =
      Shape.of(
          "a hazard",
          Key.must("id", Form.ID, "its id"),
          Key.must("signal", Form.WORD, "how bad it is")
              .with(List.of("DANGER", "WARNING", "CAUTION")),
          Key.must("hazard", Form.TEXT, "what it is"),
          Key.must("consequence", Form.TEXT, "what it does"),
          Key.must("avoid", Form.TEXT, "how to stay clear of it"));

  private static final Shape CALL =
      Shape.of("a call", Key.must("text", Form.TEXT, "what is called to the fire room"));

  static final Shape SHAPE =
      Shape.of(
          "an ordinary watch",
          Key.must("calls", Form.LIST, "what is called while nothing happens").with(CALL),
          Key.must("reports", Form.IDS, "the reports a watch may pass"),
          Key.must("hazards", Form.LIST, "what people are warned of").with(HAZARD),
          Key.may("currency-days", Form.WHOLE, "after so many days a drill is due again"));

  private SteamingReader() {}

  static Optional<SteamingWatch> read(YamlNode node, Findings findings) {
    return MapNode.of(node, SHAPE, findings)
        .map(
            m ->
                new SteamingWatch(
                    m.list("calls", Limits.SCRIPT_ITEMS, SteamingReader::call),
                    m.get("reports", Scalars.ids(Scalars::id)).orElse(List.of()),
                    m.list("hazards", Limits.SCRIPT_ITEMS, SteamingReader::hazard),
                    m.get("currency-days", Scalars.whole(1, MOST_DAYS))
                        .orElse(SteamingWatch.USUAL_CURRENCY_DAYS)));
  }

  private static Optional<String> call(YamlNode node, Findings findings) {
    return MapNode.of(node, CALL, findings)
        .flatMap(m -> m.get("text", Scalars.text(Limits.TEXT_CHARS)));
  }

  private static Optional<SteamingWatch.Hazard> hazard(YamlNode node, Findings findings) {
    return MapNode.of(node, HAZARD, findings).flatMap(SteamingReader::hazard);
  }

  private static Optional<SteamingWatch.Hazard> hazard(MapNode map) {
    NodeReader<String> text = Scalars.text(Limits.TEXT_CHARS);
    Optional<String> id = map.get("id", Scalars::id);
    Optional<String> signal = map.word("signal");
    Optional<String> hazard = map.get("hazard", text);
    Optional<String> consequence = map.get("consequence", text);
    Optional<String> avoid = map.get("avoid", text);
    return All.there(id, signal, hazard, consequence, avoid)
        ? Optional.of(
            new SteamingWatch.Hazard(
                id.orElseThrow(),
                signal.orElseThrow(),
                hazard.orElseThrow(),
                consequence.orElseThrow(),
                avoid.orElseThrow()))
        : Optional.empty();
  }
}
