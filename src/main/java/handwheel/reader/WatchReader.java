package handwheel.reader;

import handwheel.ship.Watchstander;
import java.util.List;
import java.util.Optional;

/** Reads the people on watch. */
final class WatchReader {
  static final Shape SHAPE =
      Shape.of(
          "a watchstander",
          Key.must("id", Form.ID, "his station"),
          Key.must("title", Form.TEXT, "the station in words"),
          Key.must("name", Form.TEXT, "the invented person's name"),
          Key.must("at", Form.ID, "the place where he stands at first"),
          Key.may("holds", Form.IDS, "the gauges he holds at a value by hand"));

  static final Shape STANDING =
      Shape.of(
          "a standing act",
          Key.must("who", Form.ID, "who does it"),
          Key.must("sees", Form.DOTTED_ID, "the true value before his eyes"),
          Key.must("below", Form.QUANTITY, "he acts when it falls below this"),
          Key.must("after", Form.TIME, "his delay"),
          Key.must("do", Form.ORDER, "what he then does"));

  private final Names names;

  WatchReader(Names names) {
    this.names = names;
  }

  Optional<Watchstander> read(YamlNode node, Findings findings) {
    return MapNode.of(node, SHAPE, findings).flatMap(this::watchstander);
  }

  private Optional<Watchstander> watchstander(MapNode map) {
    Optional<String> id = map.get("id", Scalars::id);
    Optional<String> title = map.get("title", Scalars.text(Limits.NAME_CHARS));
    Optional<String> name = map.get("name", Scalars.text(Limits.NAME_CHARS));
    Optional<String> at = map.get("at", names.one(Named.PLACE));
    List<String> holds = map.get("holds", Scalars.ids(names.one(Named.GAUGE))).orElse(List.of());
    return All.there(id, title, name, at)
        ? Optional.of(
            new Watchstander(
                id.orElseThrow(), title.orElseThrow(), name.orElseThrow(), at.orElseThrow(), holds))
        : Optional.empty();
  }
}
