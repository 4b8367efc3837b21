package handwheel.drill;

/** The version of everything that decides a run. */
public final class Engine {
  /** Version of the program; a record names it, and only the same version simulates the same. */
  public static final String VERSION = "0.3.0";

  /** Ticks in a second of simulated time. */
  public static final int TICKS_PER_S = 20;

  private Engine() {}

  /**
   * Converts seconds to ticks.
   *
   * @param seconds time, s, at least 0
   * @return whole ticks, rounded to the nearest
   */
  public static long ticks(double seconds) {
    return (long) StrictMath.floor(seconds * TICKS_PER_S + 0.5);
  }
}
