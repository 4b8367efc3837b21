package handwheel.drill;

import handwheel.plant.Plant;
import handwheel.plant.Port;
import handwheel.plant.Quantity;
import handwheel.units.Unit;

/** The watch of the cold light-off run: air cock, feed pump, surface blow. */
final class WarmUpWatch {
  private boolean isFed;

  void tick(Plant plant, RunListener log, Runnable checkman) {
    double psi = Quantity.DRUM_PRESSURE.in(Unit.PSIG, plant.value(Quantity.DRUM_PRESSURE));
    double levelIn = Unit.INCH.fromSi(plant.value(Quantity.DRUM_LEVEL));
    if (plant.position(Port.DRUM_VENT) > 0 && psi > 15) {
      plant.set(Port.DRUM_VENT, 0);
      log.note("air cock shut");
    }
    if (!isFed && psi >= 100) {
      isFed = true;
      plant.set(Port.MAIN_FEED_PUMP, 1);
      checkman.run();
      log.note("main feed pump on, checkman at the check");
    }
    blow(plant, levelIn, log);
  }

  private static void blow(Plant plant, double levelIn, RunListener log) {
    boolean isOpen = plant.position(Port.SURFACE_BLOW) > 0;
    if (!isOpen && levelIn > 2) {
      plant.set(Port.SURFACE_BLOW, 1);
      log.note("surface blow open");
    } else if (isOpen && levelIn < -0.8) {
      plant.set(Port.SURFACE_BLOW, 0);
      log.note("surface blow shut");
    }
  }
}
