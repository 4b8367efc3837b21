package handwheel.drill;

import handwheel.plant.Quantity;
import handwheel.plant.Zone;
import handwheel.ship.Place;

/** What a man says he sees at a place. */
final class Seen {
  /** Above this share of vapour the air is white; dew point 46 C, engineering estimate. */
  private static final double FOG = 0.10;

  /** Oil and water that a man notices underfoot. Engineering estimates. */
  private static final double OIL_KG = 0.5;

  private static final double WATER_M = 0.5;

  private static final String NOTHING = "Clear air, nothing out of place.";

  private Seen() {}

  static String at(Scene scene, Place place) {
    if (scene.isInJet(place)) {
      return "A roar and nothing to see.";
    }
    if (place.zone() == Zone.OUTSIDE) {
      return "All quiet here.";
    }
    Quantity vapour =
        place.zone() == Zone.UPPER ? Quantity.SPACE_UPPER_VAPOUR : Quantity.SPACE_LOWER_VAPOUR;
    boolean isFoggy = scene.plant.value(vapour) > FOG;
    boolean isBurning = scene.plant.value(Quantity.FIRE_BURNING) > 0.5;
    if (isBurning) {
      return "Fire and smoke.";
    }
    if (isFoggy) {
      return "White fog.";
    }
    return place.zone() == Zone.LOWER ? floor(scene) : NOTHING;
  }

  private static String floor(Scene scene) {
    if (scene.plant.value(Quantity.FIRE_OIL_MASS) > OIL_KG) {
      return "Oil on the plates.";
    }
    return scene.plant.value(Quantity.BILGE_DEPTH) > WATER_M ? "Water over the plates." : NOTHING;
  }
}
