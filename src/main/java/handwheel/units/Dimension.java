package handwheel.units;

/** A kind of quantity. Two units convert into each other only within one dimension. */
public enum Dimension {
  /** Absolute pressure, Pa. */
  ABSOLUTE_PRESSURE("absolute pressure"),
  /** Pressure above the atmosphere, or a difference of pressures, Pa. */
  GAUGE_PRESSURE("gauge pressure"),
  /** Temperature on a scale with a zero, K. */
  TEMPERATURE("temperature"),
  /** Length, level or bore, m. */
  LENGTH("length"),
  /** Time, s. */
  TIME("time"),
  /** Mass, kg. */
  MASS("mass"),
  /** Mass flow, kg/s. */
  MASS_FLOW("mass flow"),
  /** Volume, m3. */
  VOLUME("volume"),
  /** Volume flow, m3/s. */
  VOLUME_FLOW("volume flow"),
  /** Heat flow or power, W. */
  POWER("power"),
  /** Share of a whole, position of a valve, damage, dose: a bare number. */
  FRACTION("fraction"),
  /** Speed of a walker, m/s. */
  SPEED("speed"),
  /** Area, m2. */
  AREA("area"),
  /** Share a second, 1/s. */
  RATE("rate"),
  /** How fast a temperature rises. */
  HEATING_RATE("heating rate"),
  /** Mass in a volume, kg/m3. */
  DENSITY("density");

  private final String words;

  Dimension(String words) {
    this.words = words;
  }

  /**
   * Returns the dimension's name as a person reads it.
   *
   * @return words in lower case
   */
  public String words() {
    return words;
  }
}
