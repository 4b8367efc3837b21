package handwheel.scoring;

import handwheel.logbook.Entry;
import handwheel.ship.Fitting;
import handwheel.ship.Order;
import handwheel.ship.PortMove;
import handwheel.ship.Ship;
import handwheel.ship.Verb;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Where the fittings went. What counts is what the man did, so a wrong repeat-back is read instead
 * of the order it was for.
 */
final class Movements {
  private final Ship ship;
  private final RunLog log;

  Movements(Ship ship, RunLog log) {
    this.ship = ship;
    this.log = log;
  }

  /** Every movement of a fitting that reached a state, in order of time. */
  List<Entry.Moved> reaching(String fitting, Bearing wanted) {
    List<Entry.Moved> all = new ArrayList<>();
    Optional<Integer> before = Optional.empty();
    for (Entry.Moved m : of(fitting)) {
      if (isAccountedFor(m) && reached(m, before) == wanted) {
        all.add(m);
      }
      before = Optional.of(m.pos());
    }
    return all;
  }

  List<Entry.Moved> of(String fitting) {
    return log.all(Entry.Moved.class).filter(m -> m.fitting().equals(fitting)).toList();
  }

  private boolean isAccountedFor(Entry.Moved m) {
    return m.n() == 0 || log.order(m.n()).isPresent();
  }

  private Bearing reached(Entry.Moved m, Optional<Integer> before) {
    Optional<Verb> verb = verb(m);
    if (verb.isEmpty() || verb.get() == Verb.SET) {
      return byPosition(m, before);
    }
    if (!Bearing.isShutting(verb.get())) {
      return Bearing.OPEN;
    }
    return m.pos() == shutPosition(m.fitting(), verb.get()) ? Bearing.SHUT : Bearing.BETWEEN;
  }

  private static Bearing byPosition(Entry.Moved m, Optional<Integer> before) {
    if (m.pos() == 0) {
      return Bearing.SHUT;
    }
    return before.filter(was -> was > m.pos()).isPresent() ? Bearing.BETWEEN : Bearing.OPEN;
  }

  /** Position a shutting act ends at, thousandths: nought but where a machine has its own word. */
  private int shutPosition(String fitting, Verb verb) {
    List<PortMove> moves =
        ship.fitting(fitting).map((Fitting f) -> f.moves(verb)).orElse(List.of());
    if (moves.isEmpty() || moves.get(0).to().isEmpty()) {
      return 0;
    }
    return new BigDecimal(moves.get(0).to().getAsDouble())
        .movePointRight(3)
        .setScale(0, RoundingMode.HALF_UP)
        .intValue();
  }

  private Optional<Verb> verb(Entry.Moved m) {
    return (m.n() == 0 ? standing(m) : understood(m.n()))
        .filter(Order.Work.class::isInstance)
        .map(Order.Work.class::cast)
        .filter(w -> w.fittings().contains(m.fitting()))
        .map(Order.Work::verb);
  }

  private Optional<Order> understood(int n) {
    Optional<Told> told = log.order(n);
    Optional<Order> wrong = told.flatMap(log::wrongRepeat).flatMap(r -> log.read(r.say()));
    return wrong.isPresent() ? wrong : told.flatMap(Told::order);
  }

  private Optional<Order> standing(Entry.Moved m) {
    return ship.standing().stream()
        .filter(s -> s.who().equals(m.who()))
        .map(s -> s.order())
        .filter(o -> o instanceof Order.Work w && w.fittings().contains(m.fitting()))
        .findFirst();
  }
}
