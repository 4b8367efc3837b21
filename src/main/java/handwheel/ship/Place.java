package handwheel.ship;

import handwheel.plant.Port;
import handwheel.plant.Zone;
import java.util.List;
import java.util.Optional;

/**
 * A place a person can stand at.
 *
 * @param id lower-kebab id
 * @param name what people call it
 * @param zone whose air he breathes there
 * @param heightM height above the floor plates, m; says whether a ladder leads up or down
 * @param near ids of places whose jet or fire reaches this one
 * @param leakPort the plant's hole for a leak at this place, if something can break here
 */
public record Place(
    String id, String name, Zone zone, double heightM, List<String> near, Optional<Port> leakPort) {
  /**
   * Copies the list.
   *
   * @param id lower-kebab id
   * @param name what people call it
   * @param zone whose air he breathes there
   * @param heightM height above the floor plates, m; says whether a ladder leads up or down
   * @param near ids of places whose jet or fire reaches this one
   * @param leakPort the plant's hole for a leak at this place, if something can break here
   */
  public Place {
    near = List.copyOf(near);
  }

  /**
   * Returns whether the place lies inside the fire room.
   *
   * @return true for both zones of the room
   */
  public boolean isInside() {
    return zone != Zone.OUTSIDE;
  }
}
