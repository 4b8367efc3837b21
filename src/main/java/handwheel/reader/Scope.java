package handwheel.reader;

import handwheel.ship.OrderText;
import handwheel.ship.Ship;

/**
 * What the parts of a script may speak of.
 *
 * @param ship the ship
 * @param names every id of the script and the ship
 * @param orders reads orders of this ship with the script's reports
 * @param amounts reads figures that may be drawn
 * @param limitTicks longest run of the drill
 */
record Scope(Ship ship, Names names, OrderText orders, AmountReader amounts, long limitTicks) {}
