package handwheel.plant.outside;

import handwheel.plant.DrumInputs;
import handwheel.units.Unit;
import handwheel.water.Saturation;
import handwheel.water.SaturationTable;

/** The unit of 160 MW of the published four-state model, at rest and in its three steps. */
final class PublishedUnit {
  static final double TEMPERATURE_K = Unit.CELSIUS.toSi(299.272);
  static final double WATER_M3 = 57.2;
  static final double BUBBLES_M3 = 4.9;
  private static final double STEAM_KG_PER_S = 50.4195;
  private static final double FEED_J_PER_KG = 1046.93e3;

  /** Heat that keeps it there. */
  static final DrumInputs REST = rest();

  private PublishedUnit() {}

  private static DrumInputs rest() {
    Saturation s = new Saturation();
    SaturationTable.standard().at(TEMPERATURE_K, s);
    double heatW = STEAM_KG_PER_S * (s.steamEnthalpyJPerKg - FEED_J_PER_KG);
    return new DrumInputs(heatW, STEAM_KG_PER_S, STEAM_KG_PER_S, FEED_J_PER_KG);
  }

  static AstromBell atRest() {
    AstromBell model = new AstromBell(DrumSizes.PUBLISHED);
    model.rest(TEMPERATURE_K, WATER_M3, BUBBLES_M3, REST);
    return model;
  }

  /** Inputs after a step: +10 MW of heat, +10 kg/s of steam or of feed. */
  static DrumInputs step(String what) {
    return switch (what) {
      case "heat" -> of(10e6, 0, 0);
      case "steam" -> of(0, 10, 0);
      case "feed" -> of(0, 0, 10);
      default -> throw new IllegalArgumentException(what);
    };
  }

  private static DrumInputs of(double heatW, double steamKgPerS, double feedKgPerS) {
    return new DrumInputs(
        REST.heatW() + heatW,
        STEAM_KG_PER_S + steamKgPerS,
        STEAM_KG_PER_S + feedKgPerS,
        FEED_J_PER_KG);
  }
}
