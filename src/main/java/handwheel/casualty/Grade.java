package handwheel.casualty;

import handwheel.diagnostics.SourceSpot;

/**
 * What a step or a rule is worth and on what ground.
 *
 * @param points 0 to 100
 * @param isCritical whether missing it fails the run
 * @param basis ground of the charge
 * @param rule id of the trade rule behind it, such as {@code O2}; may be empty
 * @param why the reason, for people
 * @param spot where it stands in the script
 */
public record Grade(
    int points, boolean isCritical, Basis basis, String rule, String why, SourceSpot spot) {}
