package handwheel.drill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;

/**
 * A line of the list in which a boiler technician reads whether a casualty looks right.
 *
 * @param name what it is about
 * @param holds throws if it does not hold
 */
record Claim(String name, Runnable holds) {
  /** Holds a figure to one as it is printed: within half a unit of the last digit. */
  static void says(double found, String printed) {
    double half = 0.5 * Math.pow(10, -new BigDecimal(printed).scale());
    assertThat(found).isCloseTo(Double.parseDouble(printed), within(half * (1 + 1e-9)));
  }

  @Override
  public String toString() {
    return name;
  }
}
