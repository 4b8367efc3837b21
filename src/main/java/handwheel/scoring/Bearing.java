package handwheel.scoring;

import handwheel.ship.Order;
import handwheel.ship.Verb;

/** Which way an act takes a fitting. */
enum Bearing {
  /** Open, running, lit, reset. */
  OPEN,
  /** Shut, tripped, stopped, secured. */
  SHUT,
  /** Neither of the two was reached. */
  BETWEEN;

  static Bearing wanted(boolean isOpen) {
    return isOpen ? OPEN : SHUT;
  }

  Bearing opposite() {
    return this == OPEN ? SHUT : OPEN;
  }

  /** Where an order takes its fittings; a setting of nought shuts. */
  static Bearing of(Order.Work order) {
    return switch (order.verb()) {
      case OPEN, RESET, START, LIGHT -> OPEN;
      case SHUT, TRIP, STOP, SECURE -> SHUT;
      case SET ->
          order.setting().flatMap(s -> s.measure()).filter(m -> m.figure() == 0).isPresent()
              ? SHUT
              : OPEN;
    };
  }

  static boolean isShutting(Verb verb) {
    return switch (verb) {
      case SHUT, TRIP, STOP, SECURE -> true;
      case OPEN, RESET, START, LIGHT, SET -> false;
    };
  }
}
