package handwheel.plant;

/**
 * Figures of the fire side that are no quantities of the plant, worked out from what machines say.
 */
public final class Inside {
  private Inside() {}

  /** Air a kilogram of oil needs, as the saturated furnace's air ratio implies it, kg. */
  public static double airForOil(Plant plant) {
    SideFire fire = plant.front.fire(Side.SATURATED);
    return fire.firingAirKgPerS / (fire.airRatio() * fire.firingOilKgPerS);
  }

  /** Heat released for each kilogram of oil burned in the saturated furnace, J/kg. */
  public static double heatOfOilJPerKg(Plant plant) {
    Furnace furnace = plant.saturated;
    double vapourKgPerS = furnace.vapourKg.x / 0.4;
    return furnace.releasedW / (plant.front.fire(Side.SATURATED).burnedKgPerS + vapourKgPerS);
  }

  /** Heat capacity of the gas, as heat and cooling of the gas at the superheater imply it. */
  public static double gasJPerKgK(Plant plant) {
    Furnace furnace = plant.superheated;
    double coolingK = furnace.gasK.x - plant.superheater.gasBehindK;
    return plant.superheater.gasHeatW / (furnace.gasKgPerS * coolingK);
  }
}
