package handwheel.scoring;

import handwheel.casualty.Basis;
import handwheel.diagnostics.SourceSpot;

/**
 * One line of what was lost.
 *
 * @param points points lost, 0 to 100; 0 where only the verdict is touched or nobody is at fault
 * @param type its one class
 * @param step id of the step or of the rule; {@code people-hurt} or {@code people-down} for an
 *     outcome
 * @param tick when, in ticks of 0.05 s; for what was never done, when its time ran out
 * @param reading the figure behind it, for people
 * @param spot where the step or rule stands in the script
 * @param why what happened, what should have, the reason and the rule, for people
 * @param basis ground of the charge
 * @param isCritical whether it fails the run
 */
public record Charge(
    int points,
    ErrorClass type,
    String step,
    long tick,
    String reading,
    SourceSpot spot,
    String why,
    Basis basis,
    boolean isCritical) {
  /**
   * Returns what happened, without what should have.
   *
   * @return the first part of {@code why}
   */
  public String happened() {
    int end = why.indexOf(Wording.SHOULD);
    return end < 0 ? why : why.substring(0, end);
  }

  Charge withPoints(int less, String more) {
    return new Charge(less, type, step, tick, reading, spot, why + more, basis, isCritical);
  }
}
