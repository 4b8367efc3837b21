package handwheel.drill;

import handwheel.ship.Control;
import handwheel.ship.Place;
import handwheel.ship.Ship;

/** The shortest times in which anything can be done, by the quickest man there can be. */
public final class Walks {
  private final Ship ship;
  private final Roads roads;

  /**
   * Makes the walks of a ship.
   *
   * @param ship the ship
   */
  public Walks(Ship ship) {
    this.ship = ship;
    this.roads = new Roads(ship);
  }

  /**
   * Returns the shortest time from one place to another.
   *
   * @param from id of a place
   * @param to id of a place
   * @return s; infinite without a way
   */
  public double walkS(String from, String to) {
    Place start = ship.place(from).orElseThrow();
    return roads
        .quickest(start, p -> p.id().equals(to), p -> false, Pace.fastest())
        .map(Roads.Route::seconds)
        .orElse(Double.POSITIVE_INFINITY);
  }

  /**
   * Returns the shortest time from a place to the end of the work at a control.
   *
   * @param from id of a place
   * @param control where and how long the work is
   * @return s
   */
  public double workedS(String from, Control control) {
    return walkS(from, control.place()) + control.timeS() * Pace.fastest().hand();
  }
}
