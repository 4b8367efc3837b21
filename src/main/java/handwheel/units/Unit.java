package handwheel.units;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A unit of measure: SI value = (figure + offset) x factor. Factors are exact by definition (NIST
 * SP 811, appendix B) unless a comment says otherwise.
 */
public enum Unit {
  /** Pascal, absolute. */
  PA("Pa", Dimension.ABSOLUTE_PRESSURE, 1, 0, 0),
  /** Pounds-force a square inch, absolute; 6894.757 Pa as the plant's equations have it. */
  PSIA("psia", Dimension.ABSOLUTE_PRESSURE, 6894.757, 0, 1),
  /** Pascal above the atmosphere. */
  PA_GAUGE("Pa-g", Dimension.GAUGE_PRESSURE, 1, 0, 0),
  /** Pounds-force a square inch above the atmosphere; 6894.757 Pa. */
  PSIG("psig", Dimension.GAUGE_PRESSURE, 6894.757, 0, 0),
  /** Inch of water column, 249.089 Pa (conventional). */
  INCH_WATER("inWG", Dimension.GAUGE_PRESSURE, 249.089, 0, 1),
  /** Kelvin. */
  KELVIN("K", Dimension.TEMPERATURE, 1, 0, 1),
  /** Degree Celsius. */
  CELSIUS("C", Dimension.TEMPERATURE, 1, 273.15, 1),
  /** Degree Fahrenheit. */
  FAHRENHEIT("F", Dimension.TEMPERATURE, 5.0 / 9.0, 459.67, 0),
  /** Metre. */
  METRE("m", Dimension.LENGTH, 1, 0, 2),
  /** Inch. */
  INCH("in", Dimension.LENGTH, 0.0254, 0, 1),
  /** Foot. */
  FOOT("ft", Dimension.LENGTH, 0.3048, 0, 2),
  /** Second. */
  SECOND("s", Dimension.TIME, 1, 0, 1),
  /** Minute. */
  MINUTE("min", Dimension.TIME, 60, 0, 1),
  /** Hour. */
  HOUR("h", Dimension.TIME, 3600, 0, 2),
  /** Kilogram. */
  KILOGRAM("kg", Dimension.MASS, 1, 0, 1),
  /** Pound. */
  POUND("lb", Dimension.MASS, 0.45359237, 0, 0),
  /** Kilogram a second. */
  KG_PER_S("kg/s", Dimension.MASS_FLOW, 1, 0, 2),
  /** Pound an hour. */
  LB_PER_H("lb/h", Dimension.MASS_FLOW, 0.45359237 / 3600.0, 0, 0),
  /** Thousand pounds an hour. */
  KLB_PER_H("klb/h", Dimension.MASS_FLOW, 453.59237 / 3600.0, 0, 1),
  /** Pound a second. */
  LB_PER_S("lb/s", Dimension.MASS_FLOW, 0.45359237, 0, 2),
  /** Cubic metre. */
  CUBIC_METRE("m3", Dimension.VOLUME, 1, 0, 3),
  /** Cubic metre a second. */
  M3_PER_S("m3/s", Dimension.VOLUME_FLOW, 1, 0, 3),
  /** US gallon a minute. */
  GPM("gpm", Dimension.VOLUME_FLOW, 3.785411784e-3 / 60.0, 0, 0),
  /** Watt. */
  WATT("W", Dimension.POWER, 1, 0, 0),
  /** Megawatt. */
  MEGAWATT("MW", Dimension.POWER, 1e6, 0, 2),
  /** A bare number. */
  ONE("1", Dimension.FRACTION, 1, 0, 3),
  /** Per cent. */
  PERCENT("%", Dimension.FRACTION, 0.01, 0, 0),
  /** Parts in a million. */
  PPM("ppm", Dimension.FRACTION, 1e-6, 0, 1),
  /** Metre a second. */
  M_PER_S("m/s", Dimension.SPEED, 1, 0, 2),
  /** Square metre. */
  SQUARE_METRE("m2", Dimension.AREA, 1, 0, 4),
  /** A share a second. */
  PER_SECOND("1/s", Dimension.RATE, 1, 0, 5),
  /** Kilogram in a cubic metre. */
  KG_PER_M3("kg/m3", Dimension.DENSITY, 1, 0, 6),
  /** Kelvin a second. */
  KELVIN_PER_SECOND("K/s", Dimension.HEATING_RATE, 1, 0, 5),
  /** Degree Fahrenheit an hour. */
  FAHRENHEIT_PER_HOUR("F/h", Dimension.HEATING_RATE, 5.0 / 9.0 / 3600.0, 0, 0);

  private final String symbol;
  private final Dimension dimension;
  private final double factor;
  private final double offset;
  private final int decimals;

  Unit(String symbol, Dimension dimension, double factor, double offset, int decimals) {
    this.symbol = symbol;
    this.dimension = dimension;
    this.factor = factor;
    this.offset = offset;
    this.decimals = decimals;
  }

  /**
   * Returns the sign a person writes behind the figure.
   *
   * @return the symbol, such as {@code psig}
   */
  public String symbol() {
    return symbol;
  }

  /**
   * Returns what this unit measures.
   *
   * @return the dimension
   */
  public Dimension dimension() {
    return dimension;
  }

  /**
   * Returns how many decimals a display shows.
   *
   * @return decimals, 0 to 6
   */
  public int decimals() {
    return decimals;
  }

  /**
   * Converts a figure in this unit to SI.
   *
   * @param figure in this unit
   * @return the SI value of the dimension
   */
  public double toSi(double figure) {
    return (figure + offset) * factor;
  }

  /**
   * Converts an SI value to this unit.
   *
   * @param si SI value of the dimension
   * @return the figure in this unit
   */
  public double fromSi(double si) {
    return si / factor - offset;
  }

  /**
   * Finds the unit with a symbol, as a person writes it.
   *
   * @param symbol such as {@code psig}; case matters
   * @return the unit, or empty
   */
  public static Optional<Unit> ofSymbol(String symbol) {
    return Arrays.stream(values()).filter(u -> u.symbol.equals(symbol)).findFirst();
  }

  /**
   * Returns the units of one dimension, in declaration order.
   *
   * @param dimension the dimension
   * @return at least one unit
   */
  public static List<Unit> of(Dimension dimension) {
    return Arrays.stream(values()).filter(u -> u.dimension == dimension).toList();
  }
}
