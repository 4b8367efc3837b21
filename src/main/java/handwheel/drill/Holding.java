package handwheel.drill;

import handwheel.plant.StateWalker;
import handwheel.ship.Fitting;
import handwheel.ship.Order;

/** The values men hold by hand: level, header pressure, drum pressure, a clear stack. */
interface Holding {
  /**
   * Tells a man to hold a gauge at a value.
   *
   * @return false if he cannot
   */
  boolean hold(Person person, Order.Work order);

  /** A hand was put on a fitting by order: whoever held a value with it stops. */
  void handTaken(Fitting fitting);

  /** Lets everybody who stands at his valve move it for one tick. */
  void tick();

  /** Walks the men's memory. */
  void walk(StateWalker walker);
}
