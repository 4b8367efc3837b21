package handwheel.debrief;

import handwheel.scoring.Charge;
import java.util.List;

/**
 * What one mistake cost: the run with that act mended.
 *
 * @param charge the mistake
 * @param mended what the run comes to with it mended
 * @param isEnough whether the charge is gone then; if not, something else stood in its way too
 * @param spared ids of the outcomes that were charged in the run and no longer come about
 */
public record Cost(Charge charge, Outcome mended, boolean isEnough, List<String> spared) {
  /**
   * Copies the list.
   *
   * @param charge the mistake
   * @param mended what the run comes to with it mended
   * @param isEnough whether the charge is gone then
   * @param spared ids of the outcomes that no longer come about
   */
  public Cost {
    spared = List.copyOf(spared);
  }
}
