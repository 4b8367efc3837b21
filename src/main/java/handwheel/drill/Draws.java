package handwheel.drill;

import handwheel.casualty.Casualty;
import handwheel.casualty.CrewState;
import handwheel.casualty.Variation;
import java.util.SortedMap;
import java.util.TreeMap;

/** What a script leaves to be drawn anew for each run, drawn from the run's seed. */
public final class Draws {
  private Draws() {}

  /**
   * Draws.
   *
   * @param casualty the script
   * @param seed seed of the run
   * @return by name: a figure in SI; of words the index of the word
   */
  static SortedMap<String, Double> of(Casualty casualty, long seed) {
    SortedMap<String, Double> drawn = new TreeMap<>();
    for (Variation v : casualty.vary()) {
      SplitMix64 stream = SplitMix64.of(seed, "vary " + v.name());
      double at = stream.between(v.fromSi(), v.toSi());
      drawn.put(v.name(), v.isOfWords() ? StrictMath.floor(at) : at);
    }
    return drawn;
  }

  /**
   * Returns how well the watch is drilled in a run; what is drawn can be drawn again.
   *
   * @param casualty the script
   * @param seed seed of the run
   * @return green or drilled
   */
  public static CrewState crew(Casualty casualty, long seed) {
    CrewState state = casualty.start().crew();
    if (state != CrewState.DRAWN) {
      return state;
    }
    return SplitMix64.of(seed, "crew").nextDouble() < 0.5 ? CrewState.GREEN : CrewState.DRILLED;
  }

  /**
   * Returns what a run with a seed asks for.
   *
   * @param casualty the script
   * @param seed seed of the run
   * @return without the steps and the witness's lines that belong to another drawn word
   */
  public static Casualty inRun(Casualty casualty, long seed) {
    return casualty.inRun(of(casualty, seed));
  }
}
