package handwheel.scoring;

/**
 * What became of an order.
 *
 * @param kind what became of it
 * @param tick when that was known
 */
record Fate(Kind kind, long tick) {
  /** What can become of an order. */
  enum Kind {
    /** Nothing stands against it. */
    STANDING,
    /** Crew or gear failed it: a refusal that is their fault, a mishearing caught, a man hurt. */
    CREW_OR_GEAR,
    /** Refused for what it was, called back, or countermanded. */
    OWN_DOING,
    /** Repeated wrong and not caught. */
    NOT_CONFIRMED
  }

  boolean is(Kind other) {
    return kind == other;
  }
}
