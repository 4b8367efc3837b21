package handwheel.scoring;

import java.util.List;

/**
 * How one step came out. Ticks are 0.05 s.
 *
 * @param step id of the step
 * @param isDone whether it was done
 * @param points what it is worth
 * @param lost points lost on it, at most {@code points}
 * @param begunTick its instant for {@code within}; {@link #NEVER} if not done
 * @param instantTick its instant for {@code after}; {@link #NEVER} if not done
 * @param completeTick when its effect was complete; {@link #NEVER} if not done
 * @param orders numbers of the orders that did it; none where it was done unordered
 */
public record StepResult(
    String step,
    boolean isDone,
    int points,
    int lost,
    long begunTick,
    long instantTick,
    long completeTick,
    List<Integer> orders) {
  /** A tick for what never happened. */
  public static final long NEVER = -1;

  /**
   * Copies the list.
   *
   * @param step id of the step
   * @param isDone whether it was done
   * @param points what it is worth
   * @param lost points lost on it, at most {@code points}
   * @param begunTick its instant for {@code within}; {@link #NEVER} if not done
   * @param instantTick its instant for {@code after}; {@link #NEVER} if not done
   * @param completeTick when its effect was complete; {@link #NEVER} if not done
   * @param orders numbers of the orders that did it; none where it was done unordered
   */
  public StepResult {
    orders = List.copyOf(orders);
  }
}
