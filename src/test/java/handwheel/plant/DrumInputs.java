package handwheel.plant;

/**
 * What a drum on its own is given.
 *
 * @param heatW heat to the risers, W
 * @param steamKgPerS dry steam taken, kg/s
 * @param feedKgPerS feed, kg/s
 * @param feedJPerKg enthalpy of the feed, J/kg
 */
public record DrumInputs(double heatW, double steamKgPerS, double feedKgPerS, double feedJPerKg) {}
