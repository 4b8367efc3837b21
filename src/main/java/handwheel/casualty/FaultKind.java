package handwheel.casualty;

import java.util.Locale;

/** What of the plant fails and how. */
public enum FaultKind {
  /** A steam line breaks at a place. */
  LEAK,
  /** A generating tube bursts into the furnace. */
  TUBE_RUPTURE,
  /** The economizer is holed. */
  ECONOMIZER_LEAK,
  /** A sprayer plate plugs. */
  BURNER_PLUGGED,
  /** Sea water runs into a blower's intake. */
  INTAKE_FLOODING,
  /** A discharge flap sticks open. */
  FLAP_STUCK,
  /** A blower's trip falls. */
  BLOWER_TRIP,
  /** A tank's outlet blocks. */
  SUCTION_LOST,
  /** Water gets into a fuel tank. */
  WATER_IN_OIL,
  /** The suction strainer clogs. */
  STRAINER_FOULED,
  /** Sea water gets into the condensate. */
  CONDENSER_LEAK,
  /** A safety valve sticks. */
  SAFETY_STUCK,
  /** Oil sprays from a line. */
  SPRAY_LEAK,
  /** Oil runs over the plates. */
  OIL_SPILL,
  /** Something hot enough to light oil is there. */
  IGNITION,
  /** Oil runs over the plates and burns. */
  FIRE,
  /** Sea water comes in. */
  FLOODING,
  /** Electric power is lost. */
  POWER_LOST,
  /** Brick falls from a furnace's casing. */
  BRICKWORK_FAILED,
  /** The deaerating tank loses water. */
  DEAERATING_TANK_LOW,
  /** Soot burns in the uptake. */
  UPTAKE_FIRE;

  /**
   * Returns the word of a script.
   *
   * @return lower-kebab, such as {@code tube-rupture}
   */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
