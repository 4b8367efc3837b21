package handwheel.screen;

import handwheel.casualty.Casualty;
import handwheel.debrief.Scripts;
import handwheel.drill.Mode;
import handwheel.drill.Player;
import handwheel.logbook.EntrySink;
import handwheel.ship.Ship;
import java.util.Optional;

/**
 * What a drill at a terminal is made from.
 *
 * @param found script and ship
 * @param seed seed of every draw
 * @param mode how it is run
 * @param record takes the entries, the score last
 * @param guide a player that does it right, for modes that offer the next step
 */
public record Script(
    Scripts.Found found, long seed, Mode mode, EntrySink record, Optional<Player> guide) {
  /**
   * Makes one without a guide.
   *
   * @param found script and ship
   * @param seed seed of every draw
   * @param mode how it is run
   * @param record takes the entries, the score last
   */
  public Script(Scripts.Found found, long seed, Mode mode, EntrySink record) {
    this(found, seed, mode, record, Optional.empty());
  }

  Ship ship() {
    return found.ship();
  }

  Casualty casualty() {
    return found.casualty();
  }
}
