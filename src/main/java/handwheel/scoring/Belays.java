package handwheel.scoring;

import handwheel.logbook.Entry;
import handwheel.ship.Order;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Which order each belay stopped: of all that its man was told, the last that was not yet done,
 * refused or stopped before.
 */
final class Belays {
  private final RunLog log;
  private final SortedMap<Integer, Told> stoppedBy = new TreeMap<>();

  Belays(RunLog log) {
    this.log = log;
    for (Told belay : log.orders()) {
      if (belay.isBelay()) {
        target(belay).ifPresent(o -> stoppedBy.put(o.n(), belay));
      }
    }
  }

  private Optional<Told> target(Told belay) {
    return log.orders().stream()
        .filter(o -> o.n() < belay.n() && !o.isBelay() && o.who().equals(belay.who()))
        .filter(o -> !stoppedBy.containsKey(o.n()) && !isOver(o, belay.tick()))
        .reduce((a, b) -> b);
  }

  /** The belay that stopped an order. */
  Optional<Told> of(Told told) {
    return Optional.ofNullable(stoppedBy.get(told.n()));
  }

  private boolean isOver(Told told, long tick) {
    long moved = log.all(Entry.Moved.class).filter(m -> m.n() == told.n() && m.t() <= tick).count();
    long toMove =
        told.order().map(o -> o instanceof Order.Work w ? w.fittings().size() : 1).orElse(1);
    return moved >= toMove
        || log.all(Entry.Refused.class).anyMatch(r -> r.n() == told.n() && r.t() <= tick)
        || log.all(Entry.Reading.class).anyMatch(r -> r.n() == told.n() && r.t() <= tick)
        || log.all(Entry.Looked.class).anyMatch(l -> l.n() == told.n() && l.t() <= tick)
        || told.order().filter(o -> hasArrived(told, o, tick)).isPresent();
  }

  private boolean hasArrived(Told told, Order order, long tick) {
    return order instanceof Order.Go go
        && log.all(Entry.Arrived.class)
            .filter(a -> a.who().equals(go.who()) && a.place().equals(go.place()))
            .anyMatch(a -> a.t() >= told.tick() && a.t() <= tick);
  }
}
