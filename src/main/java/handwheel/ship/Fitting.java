package handwheel.ship;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A fitting: what can be done to it, what that does to the plant, and where it is worked.
 *
 * @param id lower-kebab id
 * @param name what people call it
 * @param acts each verb it knows, with the moves in order
 * @param controls where it is worked, in the ship file's order; at least one
 */
public record Fitting(
    String id, String name, SortedMap<Verb, List<PortMove>> acts, List<Control> controls) {
  /**
   * Copies the collections.
   *
   * @param id lower-kebab id
   * @param name what people call it
   * @param acts each verb it knows, with the moves in order
   * @param controls where it is worked, in the ship file's order; at least one
   */
  public Fitting {
    acts = Collections.unmodifiableSortedMap(new TreeMap<>(acts));
    controls = List.copyOf(controls);
  }

  /**
   * Finds the control at a place.
   *
   * @param placeId the place
   * @return the control, or empty
   */
  public Optional<Control> controlAt(String placeId) {
    return controls.stream().filter(c -> c.place().equals(placeId)).findFirst();
  }

  /**
   * Returns the moves of a verb.
   *
   * @param verb what is done
   * @return the moves; empty if the fitting does not know the verb
   */
  public List<PortMove> moves(Verb verb) {
    return acts.getOrDefault(verb, List.of());
  }
}
