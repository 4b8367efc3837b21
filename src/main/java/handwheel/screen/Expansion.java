package handwheel.screen;

import handwheel.ship.Order;
import java.util.List;

/**
 * What typed text stands for.
 *
 * @param sentences the full orders, as far as they are known
 * @param orders the orders, if the text is complete; else empty
 * @param message what is missing, wrong or was mended, for the trainee
 */
public record Expansion(List<String> sentences, List<Order> orders, String message) {
  static final Expansion NOTHING = new Expansion(List.of(), List.of(), "");

  /**
   * Copies the lists.
   *
   * @param sentences the full orders, as far as they are known
   * @param orders the orders, if the text is complete; else empty
   * @param message what is missing, wrong or was mended
   */
  public Expansion {
    sentences = List.copyOf(sentences);
    orders = List.copyOf(orders);
  }

  static Expansion incomplete(String sentence, String message) {
    return new Expansion(List.of(sentence), List.of(), message);
  }

  /** Returns the same with something told before what is missing. */
  Expansion after(String told) {
    return told.isEmpty() ? this : new Expansion(sentences, orders, (told + message).strip());
  }

  /**
   * Returns whether Enter gives the order.
   *
   * @return true if there is at least one order
   */
  public boolean isComplete() {
    return !orders.isEmpty();
  }

  /** Returns everything the line stands for in one text. */
  String full() {
    return String.join(" + ", sentences);
  }
}
