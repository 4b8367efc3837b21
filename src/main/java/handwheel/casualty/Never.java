package handwheel.casualty;

import java.util.List;

/**
 * An act forbidden while a condition holds.
 *
 * @param id lower-kebab id
 * @param act the forbidden act
 * @param during the condition
 * @param grade what it costs
 */
public record Never(String id, Act act, When during, Grade grade) {
  /** A forbidden act. */
  public sealed interface Act {}

  /**
   * A fitting moves in a direction.
   *
   * @param fitting id of the fitting
   * @param isOpening true: toward open; false: toward shut
   */
  public record Moving(String fitting, boolean isOpening) implements Act {}

  /**
   * Somebody is ordered to one of these places who does not stand at one of them.
   *
   * @param who station id, or {@code anyone}
   * @param places ids of the places
   */
  public record Sending(String who, List<String> places) implements Act {
    /**
     * Copies the list.
     *
     * @param who station id, or {@code anyone}
     * @param places ids of the places
     */
    public Sending {
      places = List.copyOf(places);
    }
  }
}
