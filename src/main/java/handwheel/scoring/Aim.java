package handwheel.scoring;

import handwheel.ship.Order;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * What a step asks for, or one of its fittings.
 *
 * @param fitting id of the fitting; empty where nothing is moved
 * @param seeks whether an order, carried out, would do it
 * @param undoes whether an order calls it back by asking for the opposite
 */
record Aim(Optional<String> fitting, Predicate<Order> seeks, Predicate<Order> undoes) {
  static Aim of(Predicate<Order> seeks) {
    return new Aim(Optional.empty(), seeks, order -> false);
  }

  static Aim of(String fitting, Bearing wanted) {
    return new Aim(
        Optional.of(fitting),
        order -> takes(order, fitting, wanted),
        order -> takes(order, fitting, wanted.opposite()));
  }

  private static boolean takes(Order order, String fitting, Bearing bearing) {
    return order instanceof Order.Work w
        && w.fittings().contains(fitting)
        && Bearing.of(w) == bearing;
  }

  boolean isSoughtBy(Told told) {
    return told.order().filter(seeks).isPresent();
  }

  boolean isUndoneBy(Told told) {
    return told.order().filter(undoes).isPresent();
  }

  /** Whether something said about a fitting or a place concerns this aim of an order. */
  boolean isTouchedBy(Told told, String about) {
    boolean isOther =
        told.order()
            .filter(o -> o instanceof Order.Work w && w.fittings().contains(about))
            .isPresent();
    return fitting.isEmpty() || !isOther || fitting.get().equals(about);
  }
}
