package handwheel.reader;

import java.util.Optional;

/** The files of one ship's folder. */
@FunctionalInterface
public interface ShipFiles {
  /**
   * Returns a file.
   *
   * @param name its name in the folder
   * @return its bytes, or empty if there is none
   */
  Optional<byte[]> read(String name);
}
