package handwheel.scoring;

import java.util.Locale;

/**
 * What kind of mistake a point was lost for. Omission and the commissions (selection, sequence,
 * time, quantity) are informed by Swain and Guttmann, NUREG/CR-1278, 1983 (value from memory).
 */
public enum ErrorClass {
  /** Not done. */
  OMITTED,
  /** Done, but begun or finished after its time. */
  LATE,
  /** Done before something that must come first. */
  EARLY,
  /** Done after something that must come later. */
  OUT_OF_ORDER,
  /** The right thing done to another fitting. */
  WRONG_FITTING,
  /** The fitting was moved the other way. */
  WRONG_WAY,
  /** Done on the wrong side of the bulkhead. */
  WRONG_PLACE,
  /** Begun or done in part. */
  PARTIAL,
  /** A forbidden act, or an act at a place that hurts before it is done. */
  UNSAFE,
  /** A report that was not passed. */
  NOT_REPORTED,
  /** A wrong repeat-back went uncaught and the wrong thing was done. */
  NOT_CONFIRMED,
  /** People came to harm. */
  HARM,
  /** Crew or gear failed; costs nothing. */
  NO_FAULT;

  /**
   * Returns the word in a record.
   *
   * @return lower-kebab word
   */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
