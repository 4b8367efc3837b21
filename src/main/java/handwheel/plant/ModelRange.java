package handwheel.plant;

import handwheel.units.Measure;
import handwheel.units.Unit;
import java.util.function.DoubleSupplier;

/**
 * The range of one figure in which a machine's equations hold. A run that leaves it goes on, but
 * what it shows from then on is outside the model, and that is told once.
 */
public final class ModelRange {
  private final String name;
  private final Unit unit;
  private final double low;
  private final double high;
  private final DoubleSupplier reading;
  private final Flag left;

  private ModelRange(String name, Unit unit, double low, double high, DoubleSupplier reading) {
    this.name = name;
    this.unit = unit;
    this.low = low;
    this.high = high;
    this.reading = reading;
    this.left = new Flag("outside." + name.replace(' ', '-'));
  }

  /** A figure that has to stay above {@code low} and below {@code high}, SI. */
  static ModelRange between(
      String name, Unit unit, double low, double high, DoubleSupplier reading) {
    return new ModelRange(name, unit, low, high, reading);
  }

  /** A figure that has to stay below {@code high}, SI. */
  static ModelRange below(String name, Unit unit, double high, DoubleSupplier reading) {
    return new ModelRange(name, unit, Double.NEGATIVE_INFINITY, high, reading);
  }

  /** Tells the first leaving; a figure that is no number has left. */
  void applyRule(PlantEvents events) {
    double si = reading.getAsDouble();
    boolean isInside = si > low && si < high;
    if (!isInside && !left.isSet()) {
      left.set(true);
      events.leftRange(this, si);
    }
  }

  void walkFlag(StateWalker walker) {
    left.walk(walker);
  }

  /**
   * Returns what has left its range.
   *
   * @return lower-case words, such as {@code drum temperature}
   */
  public String name() {
    return name;
  }

  /**
   * Says where the equations hold.
   *
   * @return such as {@code 280.0 to 600.0 K} or {@code below 1.00 m}
   */
  public String limits() {
    String top = figure(high);
    if (Double.isInfinite(low)) {
      return "below " + top;
    }
    return figure(low) + " to " + top;
  }

  /**
   * Prints a figure of this kind.
   *
   * @param si SI figure
   * @return figure and unit, a bare number without
   */
  public String figure(double si) {
    Measure measure = new Measure(unit.fromSi(si), unit);
    return unit == Unit.ONE ? measure.figureText() : measure.text();
  }
}
