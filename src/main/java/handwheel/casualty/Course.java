package handwheel.casualty;

import java.util.Optional;

/**
 * When a fault sets in and how.
 *
 * @param afterS how long after the phase began, s
 * @param rampS how long it takes to full size, s; 0: at once
 * @param lastsS how long after setting in it goes by itself, s; empty: it stays until mended
 */
public record Course(Amount afterS, Amount rampS, Optional<Amount> lastsS) {
  /**
   * A fault that is there at once and stays.
   *
   * @param rampS how long it takes to full size, s
   * @return the course
   */
  public static Course atOnce(Amount rampS) {
    return new Course(new Amount.Fixed(0), rampS, Optional.empty());
  }
}
