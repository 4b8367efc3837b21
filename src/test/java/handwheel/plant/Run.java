package handwheel.plant;

/** Runs a plant with nobody at the valves. */
final class Run {
  private Run() {}

  static void ticks(Plant plant, int ticks) {
    ticks(plant, ticks, PlantEvents.NONE);
  }

  static void ticks(Plant plant, int ticks, PlantEvents events) {
    for (int i = 0; i < ticks; i++) {
      plant.evaluate();
      plant.applyRules(events);
      plant.advance();
    }
    plant.evaluate();
  }
}
