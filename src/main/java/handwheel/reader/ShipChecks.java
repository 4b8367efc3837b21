package handwheel.reader;

import handwheel.diagnostics.SourceSpot;
import handwheel.ship.Place;
import handwheel.ship.Ship;
import handwheel.ship.Way;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.TreeSet;

/** Checks what no single part of a ship file shows. */
final class ShipChecks {
  private final MapNode map;
  private final Names names;

  ShipChecks(MapNode map, Names names) {
    this.map = map;
    this.names = names;
  }

  void check(Ship ship) {
    checkSupervisor(ship);
    checkWays(ship);
  }

  private void checkSupervisor(Ship ship) {
    boolean isFirst = ship.watch().isEmpty() || ship.watch().get(0).id().equals(Ship.SUPERVISOR);
    if (!isFirst) {
      map.findings()
          .add(
              FindingId.NO_SUPERVISOR,
              spot("watch"),
              "the watch starts with " + Say.quoted(ship.watch().get(0).id()),
              "The first of the watch is the trainee: " + Say.quoted(Ship.SUPERVISOR) + ".");
    }
  }

  private void checkWays(Ship ship) {
    if (ship.places().isEmpty()) {
      return;
    }
    TreeSet<String> reached = new TreeSet<>();
    Deque<String> next = new ArrayDeque<>();
    next.add(ship.places().get(0).id());
    while (!next.isEmpty()) {
      String here = next.remove();
      if (reached.add(here)) {
        ship.ways().stream().map(w -> otherEnd(w, here)).forEach(next::add);
      }
    }
    ship.places().stream().filter(p -> !reached.contains(p.id())).forEach(this::reportCutOff);
  }

  private static String otherEnd(Way way, String here) {
    if (way.from().equals(here)) {
      return way.to();
    }
    return way.to().equals(here) ? way.from() : here;
  }

  private void reportCutOff(Place place) {
    map.findings()
        .add(
            FindingId.CUT_OFF_PLACE,
            names.spot(Named.PLACE, place.id()),
            "no way leads from the first place to " + Say.quoted(place.id()),
            "Add a way, or leave the place out.");
  }

  private SourceSpot spot(String key) {
    return map.node(key).map(YamlNode::spot).orElse(map.spot());
  }
}
