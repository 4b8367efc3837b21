package handwheel.drill;

/**
 * How a blowerman works the blowers' steam valves. Engineering estimate.
 *
 * @param lookTicks ticks between looks at the stack
 * @param valveRatePerS how fast he goes to an ordered opening
 * @param trimRatePerS how fast he trims
 * @param lowest least opening when trimming
 * @param moreAir most he opens at one look for black smoke
 * @param lessAir most he closes at one look for white smoke
 * @param creep what he closes at one look while the stack is clear
 */
record BlowermanLimits(
    int lookTicks,
    double valveRatePerS,
    double trimRatePerS,
    double lowest,
    double moreAir,
    double lessAir,
    double creep) {
  static final BlowermanLimits USUAL = new BlowermanLimits(40, 0.10, 0.05, 0.03, 0.04, 0.02, 0.002);
}
