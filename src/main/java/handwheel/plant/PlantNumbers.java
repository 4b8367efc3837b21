package handwheel.plant;

import java.util.SortedMap;

/** The sizes of one ship's plant. Immutable. */
public final class PlantNumbers {
  private final double[] values;

  private PlantNumbers(double[] values) {
    this.values = values;
  }

  /**
   * Returns the usual sizes.
   *
   * @return every number at its usual value
   */
  public static PlantNumbers usual() {
    PlantNumber[] all = PlantNumber.values();
    double[] values = new double[all.length];
    for (PlantNumber n : all) {
      values[n.index()] = n.usual();
    }
    return new PlantNumbers(values);
  }

  /**
   * Returns these sizes with some of them changed.
   *
   * @param changes value by {@link PlantNumber#id()}
   * @return the changed sizes
   * @throws IllegalArgumentException if an id is unknown or a value is not a positive number
   */
  public PlantNumbers with(SortedMap<String, Double> changes) {
    double[] changed = values.clone();
    changes.forEach((id, value) -> changed[numberOf(id).index()] = positive(id, value));
    return new PlantNumbers(changed);
  }

  /**
   * Returns one size.
   *
   * @param number which
   * @return SI figure
   */
  public double get(PlantNumber number) {
    return values[number.index()];
  }

  private static PlantNumber numberOf(String id) {
    return PlantNumber.ofId(id)
        .orElseThrow(() -> new IllegalArgumentException("no plant number is called " + id));
  }

  private static double positive(String id, double value) {
    if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(id + " must be a positive number, not " + value);
    }
    return value;
  }
}
