package handwheel.casualty;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * One graded step of the response.
 *
 * @param id lower-kebab id
 * @param test what shows that it was done
 * @param within how soon its instant must come
 * @param done how soon its effect must be complete
 * @param place where it is best done
 * @param after ids of the steps that must come before, each with the trade rule that says so
 * @param grade what it is worth
 * @param only the drawn word with which it is asked for; always if empty
 */
public record Step(
    String id,
    StepTest test,
    Optional<Window> within,
    Optional<Window> done,
    Optional<Side> place,
    SortedMap<String, String> after,
    Grade grade,
    Optional<When.DrawnIs> only) {
  /**
   * Copies the map.
   *
   * @param id lower-kebab id
   * @param test what shows that it was done
   * @param within how soon its instant must come
   * @param done how soon its effect must be complete
   * @param place where it is best done
   * @param after ids of the steps that must come before, each with the trade rule that says so
   * @param grade what it is worth
   * @param only the drawn word with which it is asked for; always if empty
   */
  public Step {
    after = Collections.unmodifiableSortedMap(new TreeMap<>(after));
  }

  /** Returns the same, following only steps that are there. */
  Step following(List<String> there) {
    TreeMap<String, String> kept = new TreeMap<>(after);
    kept.keySet().retainAll(there);
    return new Step(id, test, within, done, place, kept, grade, only);
  }

  /** On which side of the bulkhead an act is done. */
  public enum Side {
    /** At the fitting, in the fire room. */
    LOCAL,
    /** Outside the fire room. */
    REMOTE
  }
}
