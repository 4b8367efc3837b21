package handwheel.ship;

/** What came of reading an order's text: the order, or what is wrong with it. */
public sealed interface OrderResult {
  /**
   * The text is an order.
   *
   * @param order the order
   */
  record Understood(Order order) implements OrderResult {}

  /**
   * The text is no order.
   *
   * @param column where the wrong word starts, from 1
   * @param message what was found and what was expected
   * @param mend how to put it right; may be empty
   */
  record NotUnderstood(int column, String message, String mend) implements OrderResult {}
}
