package handwheel.proof;

import handwheel.drill.Input;
import handwheel.drill.Player;
import handwheel.logbook.Entry;
import handwheel.ship.Order;
import java.util.List;

/** Says a list of orders, each at its tick, whatever happens. An empty list does nothing. */
final class ListPlayer implements Player {
  private final List<Timed> orders;
  private int next;

  /** An order and the tick at which it is said. */
  record Timed(long tick, Order order) {}

  ListPlayer(List<Timed> orders) {
    this.orders = List.copyOf(orders);
  }

  @Override
  public void note(Entry entry) {
    // He hears nothing.
  }

  @Override
  public List<Input> inputs(long now) {
    int first = next;
    while (next < orders.size() && orders.get(next).tick() <= now) {
      next++;
    }
    return orders.subList(first, next).stream()
        .<Input>map(o -> new Input.Said(o.order(), now))
        .toList();
  }
}
