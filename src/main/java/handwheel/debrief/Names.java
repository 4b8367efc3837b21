package handwheel.debrief;

import handwheel.ship.Fitting;
import handwheel.ship.Gauge;
import handwheel.ship.Place;
import handwheel.ship.Ship;
import handwheel.ship.Watchstander;

/**
 * What people call things. An id that the ship does not know stands for itself.
 *
 * @param ship the ship whose names they are
 */
record Names(Ship ship) {
  String title(String who) {
    return ship.watchstander(who).map(Watchstander::title).orElse(who);
  }

  String place(String id) {
    return ship.place(id).map(Place::name).orElse(id);
  }

  /** Returns the name of a fitting, or of a gauge that is held at a value like one. */
  String fitting(String id) {
    return ship.fitting(id).map(Fitting::name).orElseGet(() -> gauge(id));
  }

  String gauge(String id) {
    return ship.gauge(id).map(Gauge::name).orElse(id);
  }

  /** Returns the text with its first letter as a capital. */
  static String capital(String text) {
    return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
  }
}
