package handwheel.bench;

import handwheel.plant.Plant;
import handwheel.plant.PlantEvents;
import handwheel.plant.Port;
import handwheel.plant.Starts;
import handwheel.plant.StateDigest;

/**
 * Runs 20,000 ticks of a steam leak with tripped fires and prints a digest over every state, to
 * compare machines, Java versions and compilers by hand.
 */
public final class LeakDigest {
  private static final int TICKS = 20_000;

  private LeakDigest() {}

  /**
   * Prints the Java version, the time of a tick and the digest.
   *
   * @param arguments none
   */
  public static void main(String[] arguments) {
    Plant plant = Starts.plant("100");
    plant.set(Port.LEAK_MAIN_RUN, 5.067e-4);
    long start = System.nanoTime();
    for (int tick = 0; tick < TICKS; tick++) {
      act(plant, tick);
      plant.evaluate();
      plant.applyRules(PlantEvents.NONE);
      plant.advance();
    }
    long ns = (System.nanoTime() - start) / TICKS;
    System.out.println(
        System.getProperty("java.vm.version") + " " + System.getProperty("java.vm.info"));
    System.out.println(ns + " ns a tick, cold");
    System.out.println(StateDigest.of(plant));
  }

  private static void act(Plant plant, int tick) {
    switch (tick) {
      case 1000 -> plant.set(Port.FUEL_TRIP_SUPERHEATER, 0);
      case 1040 -> plant.set(Port.FUEL_TRIP_SATURATED, 0);
      case 2000 -> plant.set(Port.MAIN_STOP, 0);
      default -> {}
    }
  }
}
