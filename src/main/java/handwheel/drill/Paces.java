package handwheel.drill;

import java.util.Optional;

/**
 * Everybody's pace and hearing in one run.
 *
 * @param seed seed of the run
 * @param forced one pace for all, to try a slow or a fast watch; empty: drawn for each
 */
record Paces(long seed, Optional<Pace> forced) {
  Pace of(String who) {
    return forced.orElseGet(() -> Pace.drawn(SplitMix64.of(seed, "pace " + who)));
  }

  SplitMix64 hearing(String who) {
    return SplitMix64.of(seed, "hearing " + who);
  }
}
