package handwheel.plant;

/** Where a body stands, for the heat it is exposed to. */
public enum Zone {
  /** Lower level of the fire room. */
  LOWER,
  /** Upper level of the fire room. */
  UPPER,
  /** Anywhere else. */
  OUTSIDE
}
