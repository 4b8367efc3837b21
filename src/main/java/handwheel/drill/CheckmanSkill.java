package handwheel.drill;

import handwheel.plant.Plant;

/**
 * How a checkman works the feed check by the gauge glass. Engineering estimate.
 *
 * @param name the skill as scripts have it
 * @param lookTicks ticks between looks at the glass
 * @param deadBandIn error he leaves alone, in
 * @param gainPerIn opening for each inch
 * @param trimPerInS opening for each inch and second
 * @param anticipationS how far he looks ahead along the trend, s
 * @param ratePerS how fast his hand moves, opening a second
 * @param easePerS how fast he lets go after the throttle came down, opening a second; 0 for a man
 *     who does not answer the throttle at all
 */
record CheckmanSkill(
    String name,
    int lookTicks,
    double deadBandIn,
    double gainPerIn,
    double trimPerInS,
    double anticipationS,
    double ratePerS,
    double easePerS) {

  /** Answers the ordered throttle at once and knows that shrink comes first. */
  static final CheckmanSkill DRILLED =
      new CheckmanSkill("drilled", 20, 0.25, 0.10, 0.002, 4, 0.08, 0.004);

  /** Chases the glass. */
  static final CheckmanSkill GREEN = new CheckmanSkill("green", 60, 0.5, 0.20, 0.004, 0, 0.05, 0);

  boolean answersThrottle() {
    return easePerS > 0;
  }

  double lookS() {
    return lookTicks * Plant.TICK_S;
  }
}
