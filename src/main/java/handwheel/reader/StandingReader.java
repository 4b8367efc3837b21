package handwheel.reader;

import handwheel.plant.Quantity;
import handwheel.ship.Order;
import handwheel.ship.OrderText;
import handwheel.ship.Ship;
import handwheel.ship.StandingAct;
import java.util.List;
import java.util.Optional;

/** Reads what drilled people do unordered. */
final class StandingReader {
  private final Names names;
  private final NodeReader<Order> orders;
  private final boolean isShipWhole;

  /** Makes a reader; orders are read only if the ship they speak of is whole. */
  StandingReader(Ship ship, Names names, boolean isShipWhole) {
    this.names = names;
    this.isShipWhole = isShipWhole;
    this.orders = new OrderNode(new OrderText(ship, List.of()));
  }

  Optional<StandingAct> read(YamlNode node, Findings findings) {
    return MapNode.of(node, WatchReader.STANDING, findings).flatMap(this::act);
  }

  private Optional<StandingAct> act(MapNode map) {
    Optional<String> who = map.get("who", names.one(Named.WATCHSTANDER));
    Optional<Quantity> sees = map.get("sees", GaugeReader::quantity);
    Optional<Double> below = sees.flatMap(q -> map.get("below", BoundReader.si(q)));
    Optional<Double> afterS = map.get("after", Measures.wholeTicksS(0));
    Optional<Order> order = isShipWhole ? map.get("do", orders) : Optional.empty();
    return All.there(who, sees, below, afterS, order)
        ? Optional.of(
            new StandingAct(
                who.orElseThrow(),
                sees.orElseThrow(),
                below.orElseThrow(),
                afterS.orElseThrow(),
                order.orElseThrow()))
        : Optional.empty();
  }
}
