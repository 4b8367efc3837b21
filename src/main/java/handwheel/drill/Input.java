package handwheel.drill;

import handwheel.ship.Order;

/** What comes into a session from outside; it takes effect at the coming tick. */
public sealed interface Input {
  /**
   * The trainee said an order.
   *
   * @param order the order
   * @param firstKeyTick tick of its first key, not after now
   */
  record Said(Order order, long firstKeyTick) implements Input {}

  /** The trainee acknowledged what he heard: men who wait for the go-ahead have it. */
  record Acknowledged() implements Input {}

  /** The drill was stopped for a while. */
  record Stopped() implements Input {}

  /** The drill goes on. */
  record Resumed() implements Input {}

  /**
   * The drill was ended before its time.
   *
   * @param why short reason
   */
  record Ended(String why) implements Input {}
}
