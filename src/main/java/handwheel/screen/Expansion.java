package handwheel.screen;

import handwheel.ship.Order;
import java.util.List;

/**
 * What typed text stands for.
 *
 * @param sentences the full orders, as far as they are known
 * @param orders the orders, if the text is complete; else empty
 * @param message what is missing or wrong, for the trainee; empty if complete
 */
public record Expansion(List<String> sentences, List<Order> orders, String message) {
  /**
   * Copies the lists.
   *
   * @param sentences the full orders, as far as they are known
   * @param orders the orders, if the text is complete; else empty
   * @param message what is missing or wrong, for the trainee; empty if complete
   */
  public Expansion {
    sentences = List.copyOf(sentences);
    orders = List.copyOf(orders);
  }

  /**
   * Returns whether Enter gives the order.
   *
   * @return true if there is at least one order
   */
  public boolean isComplete() {
    return !orders.isEmpty();
  }
}
