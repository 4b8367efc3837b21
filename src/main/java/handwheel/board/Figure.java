package handwheel.board;

import java.util.Locale;
import java.util.OptionalDouble;

/**
 * A figure, or the reason why there is none. Never not-a-number.
 *
 * @param value the figure; empty if it is not defined
 * @param reason why it is not defined; empty if it is
 */
public record Figure(OptionalDouble value, String reason) {
  /**
   * Returns a figure.
   *
   * @param value the figure
   * @return it
   * @throws IllegalArgumentException if it is not a number, which is a fault of the caller
   */
  public static Figure of(double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("not a number");
    }
    return new Figure(OptionalDouble.of(value), "");
  }

  /**
   * Says why there is no figure.
   *
   * @param reason a few words, such as {@code all runs scored alike}
   * @return a figure without value
   */
  public static Figure undefined(String reason) {
    return new Figure(OptionalDouble.empty(), reason);
  }

  /**
   * Prints it.
   *
   * @param digits digits behind the point
   * @return the figure, or {@code not defined: } and the reason
   */
  public String text(int digits) {
    return value.isPresent()
        ? String.format(Locale.ROOT, "%." + digits + "f", value.getAsDouble())
        : "not defined: " + reason;
  }
}
