package handwheel.proof;

import java.util.List;

/** Plays trials; how many at once is its own matter. */
@FunctionalInterface
public interface Trials {
  /**
   * Plays trials.
   *
   * @param trials what to try
   * @return what came of each, in the same order
   */
  List<Outcome> play(List<Trial> trials);
}
