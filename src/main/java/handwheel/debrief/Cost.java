package handwheel.debrief;

import handwheel.scoring.Charge;

/**
 * What one mistake cost: the run with that act mended.
 *
 * @param charge the mistake
 * @param mended what the run comes to with it mended
 * @param isEnough whether the charge is gone then; if not, something else stood in its way too
 */
public record Cost(Charge charge, Outcome mended, boolean isEnough) {}
