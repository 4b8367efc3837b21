package handwheel.screen;

import handwheel.ship.Order;
import java.util.List;

/** Whether one order does what another asks for, whoever is told. */
final class Alike {
  private Alike() {}

  /**
   * Compares two orders.
   *
   * @param wanted the order that is waited for
   * @param given the order that was given
   */
  static boolean are(Order wanted, Order given) {
    if (wanted instanceof Order.Work w && given instanceof Order.Work g) {
      return isEnough(w, g);
    }
    if (wanted instanceof Order.Read w && given instanceof Order.Read g) {
      return w.gauge().equals(g.gauge()) && w.who().equals(g.who());
    }
    return wanted.text().equals(given.text());
  }

  private static boolean isEnough(Order.Work wanted, Order.Work given) {
    boolean isSame = wanted.verb() == given.verb() && wanted.setting().equals(given.setting());
    List<String> moved = given.fittings();
    return isSame && moved.containsAll(wanted.fittings());
  }
}
