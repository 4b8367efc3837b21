package handwheel.drill;

import handwheel.plant.Plant;
import handwheel.plant.Port;
import handwheel.plant.Quantity;
import handwheel.plant.StateWalker;
import handwheel.units.Unit;
import java.util.function.ToDoubleFunction;

/**
 * The pumpman at the fuel pump governor: holds a header pressure or a drum pressure, once ordered.
 *
 * <p>Memory: what he holds, his setting in the long run, his wanted setting, ticks since the order.
 */
final class PumpmanLaw {
  private static final double LOWEST_PSI = 90;
  private static final double HIGHEST_HEADER_PSI = 365;
  private static final double HIGHEST_STEAM_PSI = 350;

  private final PumpmanLimits limits;
  private double headerPsi;
  private double drumPsi;
  private double hold;
  private double want;
  private double ticks;

  PumpmanLaw(PumpmanLimits limits) {
    this.limits = limits;
  }

  /** Takes the order to hold a header pressure, psig. */
  void holdHeader(Plant plant, double psi) {
    begin(plant);
    headerPsi = psi;
  }

  /** Takes the order to hold a drum pressure, psig. */
  void holdDrum(Plant plant, double psi) {
    begin(plant);
    drumPsi = psi;
  }

  /** Lets the setting be. */
  void stop() {
    headerPsi = 0;
    drumPsi = 0;
  }

  private void begin(Plant plant) {
    stop();
    ticks = 0;
    want = Unit.PSIG.fromSi(plant.position(Port.FUEL_GOVERNOR));
    hold = want;
  }

  void tick(Plant plant, ToDoubleFunction<Quantity> eyes) {
    if (headerPsi == 0 && drumPsi == 0) {
      return;
    }
    if (ticks % limits.lookTicks() == 0) {
      look(eyes);
    }
    ticks++;
    double setting = Unit.PSIG.fromSi(plant.position(Port.FUEL_GOVERNOR));
    double hand = Hand.toward(setting, want, limits.ratePsiPerS());
    plant.set(Port.FUEL_GOVERNOR, Unit.PSIG.toSi(hand));
  }

  private void look(ToDoubleFunction<Quantity> eyes) {
    if (headerPsi > 0) {
      double error = headerPsi - psig(eyes, Quantity.FUEL_HEADER_PRESSURE);
      if (Math.abs(error) > limits.headerDeadBandPsi()) {
        want = Hand.clip(want + limits.headerGain() * error, LOWEST_PSI, HIGHEST_HEADER_PSI);
      }
      return;
    }
    double error = drumPsi - psig(eyes, Quantity.DRUM_PRESSURE);
    if (Math.abs(error) <= limits.drumDeadBandPsi()) {
      error = 0;
    }
    hold = Hand.clip(hold + limits.drumTrim() * error, LOWEST_PSI, HIGHEST_STEAM_PSI);
    want = Hand.clip(hold + limits.drumGain() * error, LOWEST_PSI, HIGHEST_STEAM_PSI);
  }

  private static double psig(ToDoubleFunction<Quantity> eyes, Quantity quantity) {
    return quantity.in(Unit.PSIG, eyes.applyAsDouble(quantity));
  }

  void walk(StateWalker walker) {
    headerPsi = walker.visit("pumpman.header-psi", headerPsi);
    drumPsi = walker.visit("pumpman.drum-psi", drumPsi);
    hold = walker.visit("pumpman.hold", hold);
    want = walker.visit("pumpman.want", want);
    ticks = walker.visit("pumpman.ticks", ticks);
  }
}
