package handwheel.screen;

import handwheel.casualty.Casualty;
import handwheel.debrief.Scripts;
import handwheel.drill.Mode;
import handwheel.logbook.EntrySink;
import handwheel.ship.Ship;

/**
 * What a drill at a terminal is made from.
 *
 * @param found script and ship
 * @param seed seed of every draw
 * @param mode how it is run
 * @param record takes the entries, the score last
 */
public record Script(Scripts.Found found, long seed, Mode mode, EntrySink record) {
  Ship ship() {
    return found.ship();
  }

  Casualty casualty() {
    return found.casualty();
  }
}
