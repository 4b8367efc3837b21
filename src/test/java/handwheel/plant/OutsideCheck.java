package handwheel.plant;

import java.util.List;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Collectors;

/**
 * A figure of the program against one from outside it. What is found depends on a constant of the
 * machine, so that it can be shown that a machine five per cent off is noticed.
 *
 * @param name what is compared, with its unit
 * @param source where the figure was published
 * @param tag how far the figure can be trusted
 * @param constant what is altered
 * @param expected the published figure
 * @param allowed how far the found figure may be off, as a share
 * @param found the figure for a factor on the constant; 1 is the program as it is
 */
public record OutsideCheck(
    String name,
    String source,
    Tag tag,
    String constant,
    double expected,
    double allowed,
    DoubleUnaryOperator found) {
  private static final List<Double> ALTERED = List.of(0.95, 1.05);

  /** How a published figure came here. */
  public enum Tag {
    /** The source was open when the figure was written down. */
    READ,
    /** Worked out with a formula or table that was read. */
    COMPUTED,
    /** Remembered; nobody has looked it up. */
    FROM_MEMORY
  }

  private double miss(double factor) {
    return Math.abs(found.applyAsDouble(factor) - expected) / Math.abs(expected);
  }

  /** Returns whether the program agrees. */
  public boolean holds() {
    return miss(1) <= allowed;
  }

  /** Returns the factors, 0.95 and 1.05, with which the check fails, as it has to with one. */
  public List<Double> failing() {
    return ALTERED.stream().filter(f -> !(miss(f) <= allowed)).toList();
  }

  /** Returns a line of the page of checks. */
  public String row() {
    return String.format(
            Locale.ROOT,
            "| %s | %s | %.4g | %.4g | %.1f | %s | %s | %s |",
            name,
            constant,
            expected,
            found.applyAsDouble(1),
            100 * allowed,
            failing().stream().map(String::valueOf).collect(Collectors.joining(", ")),
            source,
            tag.name().toLowerCase(Locale.ROOT).replace('_', ' '))
        + "\n";
  }

  @Override
  public String toString() {
    return name;
  }
}
