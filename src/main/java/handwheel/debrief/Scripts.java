package handwheel.debrief;

import handwheel.casualty.Casualty;
import handwheel.drill.Mode;
import handwheel.drill.SealedWatch;
import handwheel.logbook.Entry;
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
  record Found(Ship ship, Casualty casualty) {
    /**
     * Returns what a run of a mode plays.
     *
     * @param seed seed of the run
     * @param mode how it is run
     * @return the same with what was drawn, inside an ordinary watch if the mode is sealed
     */
    public Found played(long seed, Mode mode) {
      return new Found(ship, SealedWatch.played(casualty, ship, seed, mode));
    }
  }

  /**
   * Finds a script.
   *
   * @param shipId id of the ship
   * @param scriptId id of the script
   * @return both, or empty
   */
  Optional<Found> find(String shipId, String scriptId);

  /**
   * Finds what a run was made from; a sealed run is its script inside an ordinary watch.
   *
   * @param run the head of its record
   * @return ship and script, or empty
   */
  default Optional<Found> find(Entry.Run run) {
    Mode mode = Mode.ofWord(run.mode()).orElse(Mode.PRACTICE);
    return find(run.ship(), run.script()).map(f -> f.played(run.seed(), mode));
  }
}
