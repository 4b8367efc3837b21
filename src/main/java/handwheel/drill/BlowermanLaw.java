package handwheel.drill;

import handwheel.plant.Plant;
import handwheel.plant.Port;
import handwheel.plant.Quantity;
import handwheel.plant.StateWalker;
import java.util.function.ToDoubleFunction;

/**
 * The blowerman at both blowers' steam valves: goes to ordered openings, or trims the air by the
 * stack (more for black smoke, less for white, a little less while it is clear). Trimming he
 * touches only blowers that run.
 *
 * <p>Memory: what he does, wanted opening of each valve, ticks since the order.
 */
final class BlowermanLaw {
  private static final double NOTHING = 0;
  private static final double VALVES = 1;
  private static final double TRIMS = 2;
  private static final Port[] VALVE = {Port.BLOWER_1_STEAM, Port.BLOWER_2_STEAM};
  private static final Quantity[] RUNNING = {Quantity.BLOWER_1_RUNNING, Quantity.BLOWER_2_RUNNING};
  private static final String[] WANT = {"blowerman.want.1", "blowerman.want.2"};

  private final BlowermanLimits limits;
  private final double[] want = new double[VALVE.length];
  private double task = NOTHING;
  private double ticks;

  BlowermanLaw(BlowermanLimits limits) {
    this.limits = limits;
  }

  /** Takes the order to go to these openings. */
  void toValves(double first, double second) {
    task = VALVES;
    want[0] = first;
    want[1] = second;
  }

  /** Takes the order to trim by the stack. */
  void trim(Plant plant) {
    task = TRIMS;
    ticks = 0;
    for (int i = 0; i < VALVE.length; i++) {
      want[i] = plant.position(VALVE[i]);
    }
  }

  /** Lets both valves be. */
  void stop() {
    task = NOTHING;
  }

  void tick(Plant plant, ToDoubleFunction<Quantity> eyes) {
    if (task == NOTHING) {
      return;
    }
    boolean trims = task == TRIMS;
    if (trims && ticks % limits.lookTicks() == 0) {
      look(plant, eyes);
    }
    ticks++;
    double rate = trims ? limits.trimRatePerS() : limits.valveRatePerS();
    for (int i = 0; i < VALVE.length; i++) {
      if (!trims || isRunning(plant, i)) {
        plant.set(VALVE[i], Hand.toward(plant.position(VALVE[i]), want[i], rate));
      }
    }
  }

  private void look(Plant plant, ToDoubleFunction<Quantity> eyes) {
    double change = change(eyes);
    for (int i = 0; i < VALVE.length; i++) {
      if (change != 0 && isRunning(plant, i)) {
        want[i] = Hand.clip(plant.position(VALVE[i]) + change, limits.lowest(), 1);
      }
    }
  }

  private double change(ToDoubleFunction<Quantity> eyes) {
    double black = eyes.applyAsDouble(Quantity.STACK_BLACK);
    double white = eyes.applyAsDouble(Quantity.STACK_WHITE);
    if (black > 0.10) {
      return limits.moreAir() * Math.min(1, black / 0.3);
    }
    if (white > 0.10) {
      return -limits.lessAir() * Math.min(1, white / 0.3);
    }
    return black < 0.02 ? -limits.creep() : 0;
  }

  private static boolean isRunning(Plant plant, int blower) {
    return plant.value(RUNNING[blower]) > 0;
  }

  void walk(StateWalker walker) {
    task = walker.visit("blowerman.task", task);
    ticks = walker.visit("blowerman.ticks", ticks);
    for (int i = 0; i < VALVE.length; i++) {
      want[i] = walker.visit(WANT[i], want[i]);
    }
  }
}
