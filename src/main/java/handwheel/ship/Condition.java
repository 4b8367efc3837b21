package handwheel.ship;

import handwheel.plant.Port;
import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A named initial condition of the plant.
 *
 * @param id lower-kebab id
 * @param states every state of the plant's walk by its name, SI
 * @param ports position of every port, SI or index of the choice
 */
public record Condition(
    String id, SortedMap<String, Double> states, SortedMap<Port, Double> ports) {
  /**
   * Copies the maps.
   *
   * @param id lower-kebab id
   * @param states every state of the plant's walk by its name, SI
   * @param ports position of every port, SI or index of the choice
   */
  public Condition {
    states = Collections.unmodifiableSortedMap(new TreeMap<>(states));
    ports = Collections.unmodifiableSortedMap(new TreeMap<>(ports));
  }
}
