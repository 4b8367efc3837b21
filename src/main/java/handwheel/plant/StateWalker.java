package handwheel.plant;

/**
 * Visits states one after another in a fixed order. What it returns is stored, so that one walk
 * copies, restores, digests, traces and checks.
 */
@FunctionalInterface
public interface StateWalker {
  /**
   * Visits one state.
   *
   * @param name lower-kebab words joined by dots, such as {@code drum.water-volume}
   * @param value its value; flags are 0 or 1, timers count ticks, ports are SI positions
   * @return the value to store; {@code value} itself leaves the state as it is
   */
  double visit(String name, double value);
}
