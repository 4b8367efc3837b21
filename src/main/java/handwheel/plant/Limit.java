package handwheel.plant;

/** A damage or dose whose reaching 1 is told once. */
public enum Limit {
  /** Superheater creep damage: a tube fails. */
  SUPERHEATER_DAMAGE,
  /** Generating tube creep damage: a tube fails. */
  TUBE_DAMAGE,
  /** Heat dose of whoever stood on the upper level all the time. */
  UPPER_DOSE,
  /** Heat dose of whoever stood on the lower level all the time. */
  LOWER_DOSE
}
