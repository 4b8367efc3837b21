package handwheel.plant.outside;

/**
 * Sizes and coefficients of a drum boiler in the four-state model.
 *
 * @param totalM3 volume of drum, risers and downcomers
 * @param riserM3 volume of the risers
 * @param downcomerM3 volume of the downcomers
 * @param areaM2 water surface in the drum
 * @param steelKg all steel at saturation temperature
 * @param riserSteelKg of that, in the risers
 * @param drumSteelKg of that, in the drum
 * @param steelJPerKgK heat capacity of steel
 * @param downcomerM2 flow area of the downcomers
 * @param loss friction coefficient of the circulation
 * @param beta how much of the riser's excess flow carries steam into the drum water
 * @param residenceS residence time of steam below the surface
 * @param slip steam's speed over the water's in the risers; 1 in the paper
 */
record DrumSizes(
    double totalM3,
    double riserM3,
    double downcomerM3,
    double areaM2,
    double steelKg,
    double riserSteelKg,
    double drumSteelKg,
    double steelJPerKgK,
    double downcomerM2,
    double loss,
    double beta,
    double residenceS,
    double slip) {

  /**
   * The unit of 160 MW of the paper. Read in a public library of models that states it was
   * calibrated on the paper's steady state; the downcomer area is computed to close the circulation
   * at k = 25.
   */
  static final DrumSizes PUBLISHED =
      new DrumSizes(88, 37, 11, 20, 300_000, 160_000, 0, 550, 0.3812, 25, 0.3, 12, 1);

  /**
   * The drum of the training ship, typed again so that a change of the plant is noticed. Its slip
   * and a residence time of 3 s are ours, the rest of the model is the paper's.
   */
  static final DrumSizes SHIP =
      new DrumSizes(9.9, 2.6, 1.0, 5.9, 26_000, 14_300, 6_500, 500, 0.12, 28, 0.3, 3, 2.5);
}
