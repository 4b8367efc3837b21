package handwheel.casualty;

/**
 * A bound on a value.
 *
 * @param isUpper true: the value must be below; false: above
 * @param si the bound, SI
 */
public record Bound(boolean isUpper, double si) {
  /**
   * Returns whether a value keeps the bound.
   *
   * @param valueSi the value, SI
   * @return true when strictly below (above) it
   */
  public boolean holds(double valueSi) {
    return isUpper ? valueSi < si : valueSi > si;
  }
}
