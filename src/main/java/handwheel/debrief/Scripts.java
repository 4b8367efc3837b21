package handwheel.debrief;

import handwheel.casualty.Casualty;
import handwheel.ship.Ship;
import java.util.Optional;

/** Finds ships and scripts by their ids. */
@FunctionalInterface
public interface Scripts {
  /**
   * A script and its ship.
   *
   * @param ship the ship
   * @param casualty the script
   */
  record Found(Ship ship, Casualty casualty) {}

  /**
   * Finds a script.
   *
   * @param shipId id of the ship
   * @param scriptId id of the script
   * @return both, or empty
   */
  Optional<Found> find(String shipId, String scriptId);
}
