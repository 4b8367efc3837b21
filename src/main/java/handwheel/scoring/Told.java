package handwheel.scoring;

import handwheel.logbook.Entry;
import handwheel.ship.Order;
import java.util.Optional;

/**
 * An order the trainee said.
 *
 * @param said the line of the record
 * @param order what it means; empty where the text is no order of this ship
 */
record Told(Entry.OrderSaid said, Optional<Order> order) {
  /** Typing is not what is graded, but a first key counts at most this long before Enter: 4 s. */
  static final long FIRST_KEY_TICKS = 80;

  int n() {
    return said.n();
  }

  /** Tick of Enter. */
  long tick() {
    return said.t();
  }

  /** Tick of the first key, never more than 4 s before Enter. */
  long firstKeyTick() {
    return Math.min(said.t(), Math.max(said.from(), said.t() - FIRST_KEY_TICKS));
  }

  /** The man who is told; empty where it is everybody, nobody or the trainee himself. */
  Optional<String> who() {
    return order.flatMap(o -> o.accept(new ManTold()));
  }

  boolean isBelay() {
    return order.filter(Order.Belay.class::isInstance).isPresent();
  }
}
