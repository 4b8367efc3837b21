package handwheel.plant;

/** What all burners of one furnace do together in this tick. */
final class SideFire {
  /** Oil burned in the flames, kg/s. */
  double burnedKgPerS;

  /** Oil that leaves the burners unburned, kg/s. */
  double unburnedKgPerS;

  /** Burners lit and fed with oil. */
  int firing;

  /** Oil to those, kg/s. */
  double firingOilKgPerS;

  /** Air to those, kg/s. */
  double firingAirKgPerS;

  /** Sea water through the registers, kg/s. */
  double waterKgPerS;

  /** Whether an oil root valve of the furnace is open. */
  boolean isRootOpen;

  void clear() {
    isRootOpen = false;
    burnedKgPerS = 0;
    unburnedKgPerS = 0;
    firing = 0;
    firingOilKgPerS = 0;
    firingAirKgPerS = 0;
    waterKgPerS = 0;
  }

  /** Air over what the burning oil needs; 9 stands for no fire. */
  double airRatio() {
    return firing > 0 ? firingAirKgPerS / (Physics.AIR_FOR_OIL * firingOilKgPerS) : 9;
  }
}
