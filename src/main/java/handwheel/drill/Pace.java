package handwheel.drill;

/**
 * How fast one person walks, climbs, turns and reacts. Walking speeds are drawn evenly from the
 * range for male crew of IMO MSC.1/Circ.1533 annex 3 tables 3.4 and 3.5: flat 1.11 to 1.85 m/s,
 * stairs down 0.76 to 1.26 m/s, stairs up 0.50 to 0.84 m/s. Reaction and hand are engineering
 * estimates.
 *
 * @param flatMPerS on the flat, m/s
 * @param downMPerS down a ladder, along it, m/s
 * @param upMPerS up a ladder, along it, m/s
 * @param hand factor on the time to work a control
 * @param reactionTicks from hearing to doing
 */
record Pace(double flatMPerS, double downMPerS, double upMPerS, double hand, long reactionTicks) {
  /** Makes the pace at a share of the range. */
  static Pace at(double walking, double hand, double reaction) {
    return new Pace(
        1.11 + 0.74 * walking,
        0.76 + 0.50 * walking,
        0.50 + 0.34 * walking,
        1.25 - 0.35 * hand,
        Engine.ticks(1.5 - reaction));
  }

  /** Draws a person's pace. */
  static Pace drawn(SplitMix64 stream) {
    double walking = stream.nextDouble();
    double hand = stream.nextDouble();
    return at(walking, hand, stream.nextDouble());
  }

  /** The slowest of the range. */
  static Pace slowest() {
    return at(0, 0, 0);
  }

  /** The fastest of the range. */
  static Pace fastest() {
    return at(1, 1, 1);
  }

  double seconds(Roads.Leg leg) {
    double climb = leg.isUp() ? upMPerS : downMPerS;
    return leg.way().flatM() / flatMPerS + leg.way().ladderM() / climb;
  }
}
