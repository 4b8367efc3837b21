package handwheel.drill;

/**
 * How a pumpman works the fuel pump governor. Engineering estimate.
 *
 * @param lookTicks ticks between looks at his gauge
 * @param ratePsiPerS how fast he turns, psi a second
 * @param headerDeadBandPsi header error he leaves alone
 * @param headerGain psi of setting for each psi of header
 * @param drumDeadBandPsi drum error he leaves alone
 * @param drumTrim psi of setting kept for each psi of drum and look
 * @param drumGain psi of setting for each psi of drum
 */
record PumpmanLimits(
    int lookTicks,
    double ratePsiPerS,
    double headerDeadBandPsi,
    double headerGain,
    double drumDeadBandPsi,
    double drumTrim,
    double drumGain) {
  static final PumpmanLimits USUAL = new PumpmanLimits(40, 20, 3, 0.5, 1, 0.3, 6);
}
