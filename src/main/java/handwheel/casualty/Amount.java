package handwheel.casualty;

import java.util.SortedMap;

/** A figure of a script: fixed, or drawn anew for each run. */
public sealed interface Amount {
  /**
   * Returns the figure for a run.
   *
   * @param drawn what was drawn for each variation, SI
   * @return SI value
   */
  double in(SortedMap<String, Double> drawn);

  /**
   * The same in every run.
   *
   * @param si SI value
   */
  record Fixed(double si) implements Amount {
    @Override
    public double in(SortedMap<String, Double> drawn) {
      return si;
    }
  }

  /**
   * Drawn for each run.
   *
   * @param variation name of the variation
   */
  record Drawn(String variation) implements Amount {
    @Override
    public double in(SortedMap<String, Double> drawn) {
      Double si = drawn.get(variation);
      if (si == null) {
        throw new IllegalArgumentException("nothing was drawn for variation " + variation);
      }
      return si;
    }
  }
}
