package handwheel.reader;

import handwheel.casualty.Grade;
import handwheel.casualty.Never;
import handwheel.casualty.When;
import handwheel.plant.Zone;
import handwheel.ship.Place;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads forbidden acts. */
final class NeverReader {
  private static final String ANYONE = "anyone";

  static final OneShapeOf SHAPES =
      OneShapeOf.of(
          "a never",
          List.of("moving", "send"),
          shape(
              "a never on a fitting",
              Key.must("moving", Form.ID, "the fitting that must not move"),
              Key.must("toward", Form.WORD, "which way").with(List.of("open", "shut"))),
          shape(
              "a never on sending",
              Key.must("send", Form.ID, "who must not be sent, or `anyone`"),
              Key.must("to", Form.IDS, "the places or zones")));

  private final Scope scope;
  private final ConditionReader conditions;

  NeverReader(Scope scope) {
    this.scope = scope;
    this.conditions = new ConditionReader(scope);
  }

  private static Shape shape(String what, Key... act) {
    return Shape.of(what, Key.must("id", Form.ID, "its id"))
        .plus(List.of(act))
        .plus(List.of(Key.must("while", Form.CONDITION, "when it is forbidden")))
        .plus(GradeReader.KEYS);
  }

  Optional<Never> read(YamlNode node, Findings findings) {
    boolean isMoving = node.at("moving").isPresent();
    return SHAPES.read(node, findings).flatMap(map -> never(map, isMoving));
  }

  private Optional<Never> never(MapNode map, boolean isMoving) {
    Optional<String> id = map.get("id", Scalars::id);
    Optional<Never.Act> act = isMoving ? moving(map) : sending(map);
    Optional<When> during = map.get("while", conditions);
    Optional<Grade> grade = GradeReader.read(map);
    return All.there(id, act, during, grade)
        ? Optional.of(
            new Never(
                id.orElseThrow(), act.orElseThrow(), during.orElseThrow(), grade.orElseThrow()))
        : Optional.empty();
  }

  private Optional<Never.Act> moving(MapNode map) {
    Optional<String> fitting = map.get("moving", scope.names().one(Named.FITTING));
    Optional<String> toward = map.word("toward");
    return fitting.flatMap(f -> toward.map(t -> new Never.Moving(f, t.equals("open"))));
  }

  private Optional<Never.Act> sending(MapNode map) {
    Optional<String> who = map.get("send", this::who);
    Optional<List<String>> to = map.get("to", Scalars.ids(this::placeOrZone));
    return who.flatMap(w -> to.map(t -> new Never.Sending(w, places(t))));
  }

  private Optional<String> who(YamlNode node, Findings findings) {
    return node instanceof YamlNode.Scalar s && s.text().equals(ANYONE)
        ? Optional.of(ANYONE)
        : scope.names().one(Named.WATCHSTANDER).read(node, findings);
  }

  private Optional<String> placeOrZone(YamlNode node, Findings findings) {
    return node instanceof YamlNode.Scalar s && PlaceReader.zone(s.text()).isPresent()
        ? Optional.of(s.text())
        : scope.names().one(Named.PLACE).read(node, findings);
  }

  /** Returns the places, with those of a zone for the zone, each once. */
  private List<String> places(List<String> placesAndZones) {
    Set<String> places = new LinkedHashSet<>();
    for (String id : placesAndZones) {
      Optional<Zone> zone = PlaceReader.zone(id);
      zone.ifPresentOrElse(z -> places.addAll(placesIn(z)), () -> places.add(id));
    }
    return new ArrayList<>(places);
  }

  private List<String> placesIn(Zone zone) {
    return scope.ship().places().stream().filter(p -> p.zone() == zone).map(Place::id).toList();
  }
}
