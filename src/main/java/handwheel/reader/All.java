package handwheel.reader;

import java.util.Arrays;
import java.util.Optional;

/** Asks whether all parts of something are there. */
final class All {
  private All() {}

  static boolean there(Optional<?>... parts) {
    return Arrays.stream(parts).allMatch(Optional::isPresent);
  }
}
