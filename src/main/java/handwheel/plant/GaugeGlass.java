package handwheel.plant;

/** Tells once when the water leaves the gauge glass at either end. */
final class GaugeGlass {
  private static final double INCH_M = 0.0254;
  private static final double END_M = 7 * INCH_M;
  private static final double BACK_M = 5.9 * INCH_M;

  private final Flag low = new Flag("glass.out-of-sight-low");
  private final Flag high = new Flag("glass.out-of-sight-high");

  void applyRules(double levelM, PlantEvents events) {
    if (!low.isSet() && levelM < -END_M) {
      low.set(true);
      events.waterOutOfSightLow();
    } else if (low.isSet() && levelM > -BACK_M) {
      low.set(false);
    }
    if (!high.isSet() && levelM > END_M) {
      high.set(true);
      events.waterOutOfSightHigh();
    } else if (high.isSet() && levelM < BACK_M) {
      high.set(false);
    }
  }

  void walkFlags(StateWalker walker) {
    low.walk(walker);
    high.walk(walker);
  }
}
