package handwheel.reader;

import java.util.Optional;

/** The files of one ship's folder. */
@FunctionalInterface
public interface ShipFiles {
  /** Name of the file every ship has. */
  String SHIP = "ship.yaml";

  /**
   * Returns a file's content.
   *
   * @param name name in the folder, lower-case, ending in {@code .yaml}, without any folder
   * @return the bytes, or empty if there is no such file
   */
  Optional<byte[]> read(String name);

  /**
   * Returns what a person knows a file by.
   *
   * @param name name in the folder
   * @return such as {@code drills/ships/alder-reach/ship.yaml}; the name itself if not overridden
   */
  default String shown(String name) {
    return name;
  }
}
