package handwheel.ship;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

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
   * Returns what stops it, if it is a machine: the moves of the first of stop, trip and shut that
   * it knows with fixed ends.
   *
   * @return the moves; empty if it is nothing that starts and stops
   */
  public List<PortMove> stopMoves() {
    if (moves(Verb.START).isEmpty()) {
      return List.of();
    }
    return Stream.of(Verb.STOP, Verb.TRIP, Verb.SHUT)
        .map(this::moves)
        .filter(m -> !m.isEmpty() && m.stream().allMatch(p -> p.to().isPresent()))
        .findFirst()
        .orElse(List.of());
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
