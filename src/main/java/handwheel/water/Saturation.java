package handwheel.water;

/**
 * Saturated water and steam at one temperature, with the slopes of every property. One object is
 * filled again and again so that a look-up allocates nothing.
 */
public final class Saturation {
  /** Pressure, Pa absolute. */
  public double pressurePa;

  /** Slope of the pressure, Pa/K. */
  public double pressureSlopePaPerK;

  /** Enthalpy of saturated water, J/kg. */
  public double waterEnthalpyJPerKg;

  /** Slope of the water's enthalpy, J/(kg K). */
  public double waterEnthalpySlopeJPerKgK;

  /** Enthalpy of saturated steam, J/kg. */
  public double steamEnthalpyJPerKg;

  /** Slope of the steam's enthalpy, J/(kg K). */
  public double steamEnthalpySlopeJPerKgK;

  /** Density of saturated water, kg/m3. */
  public double waterDensityKgPerM3;

  /** Slope of the water's density, kg/(m3 K). */
  public double waterDensitySlopeKgPerM3K;

  /** Density of saturated steam, kg/m3. */
  public double steamDensityKgPerM3;

  /** Slope of the steam's density, kg/(m3 K). */
  public double steamDensitySlopeKgPerM3K;

  /** Makes an empty one, to be filled by {@link SaturationTable#at}. */
  public Saturation() {
    // All zero until the first look-up.
  }
}
