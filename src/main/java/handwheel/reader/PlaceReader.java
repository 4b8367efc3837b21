package handwheel.reader;

import handwheel.plant.Port;
import handwheel.plant.Zone;
import handwheel.ship.Place;
import handwheel.ship.Way;
import handwheel.units.Unit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Reads the places of a ship and the ways between them. */
final class PlaceReader {
  /** Words that mean more than one place. */
  static final String EVERYWHERE = "everywhere";

  static final Shape SHAPE =
      Shape.of(
          "a place",
          Key.must("id", Form.ID, "its id"),
          Key.must("name", Form.TEXT, "what people call it"),
          Key.must("zone", Form.WORD, "whose air is breathed there").with(zones()),
          Key.must("height", Form.QUANTITY, "its height above the floor plates"),
          Key.may("near", Form.IDS, "places whose jet or fire reaches it"),
          Key.may("leak", Form.DOTTED_ID, "the plant's hole, if something can break there"));

  static final Shape WAY =
      Shape.of(
          "a way",
          Key.must("from", Form.ID, "a place"),
          Key.must("to", Form.ID, "the place at the other end"),
          Key.may("flat", Form.QUANTITY, "its level length"),
          Key.may("ladder", Form.QUANTITY, "its length along a ladder"));

  private static final double FAR_M = 1_000;

  private final Names names;

  PlaceReader(Names names) {
    this.names = names;
  }

  /** Returns the words of the zones. */
  static List<String> zones() {
    return Arrays.stream(Zone.values()).map(PlaceReader::word).toList();
  }

  /** Returns the zone of a word; empty if it is none. */
  static Optional<Zone> zone(String word) {
    return Arrays.stream(Zone.values()).filter(z -> word(z).equals(word)).findFirst();
  }

  private static String word(Zone zone) {
    return zone.name().toLowerCase(Locale.ROOT);
  }

  Optional<Place> place(YamlNode node, Findings findings) {
    return MapNode.of(node, SHAPE, findings).flatMap(this::place);
  }

  private Optional<Place> place(MapNode map) {
    Optional<String> id = map.get("id", PlaceReader::placeId);
    Optional<String> name = map.get("name", Scalars.text(Limits.NAME_CHARS));
    Optional<Zone> zone = map.word("zone").flatMap(PlaceReader::zone);
    Optional<Double> heightM = map.get("height", Measures.si(Wanted.LENGTH, -FAR_M, FAR_M));
    List<String> near = map.get("near", names.list(Named.PLACE)).orElse(List.of());
    Optional<Port> leak = map.get("leak", PlaceReader::hole);
    return All.there(id, name, zone, heightM)
        ? Optional.of(
            new Place(
                id.orElseThrow(),
                name.orElseThrow(),
                zone.orElseThrow(),
                heightM.orElseThrow(),
                near,
                leak))
        : Optional.empty();
  }

  private static Optional<String> placeId(YamlNode node, Findings findings) {
    List<String> reserved = new ArrayList<>(zones());
    reserved.add(EVERYWHERE);
    Optional<String> id = Scalars.id(node, findings);
    boolean isReserved = id.filter(reserved::contains).isPresent();
    if (isReserved) {
      findings.add(
          FindingId.RESERVED_ID,
          node.spot(),
          Say.quoted(id.orElseThrow()) + " means more than one place",
          "Give the place another id.");
    }
    return isReserved ? Optional.empty() : id;
  }

  private static Optional<Port> hole(YamlNode node, Findings findings) {
    Optional<Port> port = PortReader.port(node, findings);
    boolean isHole = port.filter(p -> p.unit() == Unit.SQUARE_METRE).isPresent();
    if (port.isPresent() && !isHole) {
      List<String> holes =
          Arrays.stream(Port.values())
              .filter(p -> p.unit() == Unit.SQUARE_METRE)
              .map(Port::id)
              .toList();
      findings.add(
          FindingId.WRONG_PORT,
          node.spot(),
          Say.quoted(port.get().id()) + " is no hole",
          "Holes: " + Say.quoted(holes) + ".");
    }
    return isHole ? port : Optional.empty();
  }

  Optional<Way> way(YamlNode node, Findings findings) {
    return MapNode.of(node, WAY, findings).flatMap(this::way);
  }

  private Optional<Way> way(MapNode map) {
    Optional<String> from = map.get("from", names.one(Named.PLACE));
    Optional<String> to = map.get("to", names.one(Named.PLACE));
    double flatM = map.get("flat", Measures.si(Wanted.LENGTH, 0, FAR_M)).orElse(0.0);
    double ladderM = map.get("ladder", Measures.si(Wanted.LENGTH, 0, FAR_M)).orElse(0.0);
    if (!map.has("flat") && !map.has("ladder")) {
      map.findings()
          .add(
              FindingId.NO_LENGTH,
              map.spot(),
              "the way has neither `flat` nor `ladder`",
              "Write how long it is, such as `flat: 4 m`.");
    }
    return All.there(from, to)
        ? Optional.of(new Way(from.orElseThrow(), to.orElseThrow(), flatM, ladderM))
        : Optional.empty();
  }
}
