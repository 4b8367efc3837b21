package handwheel.screen;

import handwheel.casualty.Casualty;
import handwheel.casualty.Caution;
import handwheel.casualty.Step;
import handwheel.ship.Order;
import java.util.List;
import java.util.Optional;

/**
 * Which cautions belong before an order.
 *
 * @param casualty whose steps they belong to
 */
record Hazards(Casualty casualty) {
  List<Caution> before(Order order) {
    List<String> steps = steps(order).stream().map(Step::id).toList();
    return casualty.cautions().stream()
        .filter(c -> c.before().stream().anyMatch(steps::contains))
        .toList();
  }

  /** Returns the first caution before any of the orders that was not acknowledged yet. */
  Optional<Caution> open(List<Order> orders, Aid aid) {
    return orders.stream()
        .flatMap(o -> before(o).stream())
        .filter(c -> !aid.acknowledged().contains(c.id()))
        .findFirst();
  }

  List<Step> steps(Order order) {
    return casualty.response().stream().filter(s -> s.test().accept(new Serves(order))).toList();
  }
}
