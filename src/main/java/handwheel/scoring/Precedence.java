package handwheel.scoring;

import handwheel.casualty.Step;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * What must come before what: the {@code after} of the steps and all that follows from it. An order
 * that rests on the superheater-first preference alone is not graded within 3 s.
 */
final class Precedence {
  /** The preference for the superheater trip when one hand works both. */
  static final String PREFERENCE = "O1";

  static final long PREFERENCE_TICKS = 60;

  private final List<Step> steps;
  private final boolean[][] isBefore;
  private final boolean[][] isStrictlyBefore;

  Precedence(List<Step> steps) {
    this.steps = List.copyOf(steps);
    this.isBefore = closure(false);
    this.isStrictlyBefore = closure(true);
  }

  private boolean[][] closure(boolean isPreferenceLeftOut) {
    int n = steps.size();
    boolean[][] before = new boolean[n][n];
    for (int x = 0; x < n; x++) {
      for (int y = 0; y < n; y++) {
        String rule = steps.get(x).after().get(steps.get(y).id());
        before[y][x] = rule != null && !(isPreferenceLeftOut && rule.equals(PREFERENCE));
      }
    }
    for (int k = 0; k < n; k++) {
      for (int y = 0; y < n; y++) {
        throughMiddle(before, y, k);
      }
    }
    return before;
  }

  private static void throughMiddle(boolean[][] before, int first, int middle) {
    if (!before[first][middle]) {
      return;
    }
    for (int last = 0; last < before.length; last++) {
      before[first][last] |= before[middle][last];
    }
  }

  /** Whether one step must come before another. */
  boolean isBefore(int first, int then) {
    return first != then && isBefore[first][then];
  }

  /** Whether it must by more than the preference. */
  boolean isStrictlyBefore(int first, int then) {
    return first != then && isStrictlyBefore[first][then];
  }

  /** Whether doing {@code then} at one tick and {@code first} at another is against the order. */
  boolean isBroken(int first, int then, long firstTick, long thenTick) {
    long graceTicks = isStrictlyBefore(first, then) ? 0 : PREFERENCE_TICKS;
    return isBefore(first, then) && firstTick - thenTick > graceTicks;
  }

  /** The rules behind a pair, with the steps between, for people. */
  String because(int first, int then) {
    Set<String> rules = new LinkedHashSet<>();
    List<String> between = new ArrayList<>();
    int at = then;
    while (steps.get(at).after().get(steps.get(first).id()) == null) {
      int next = directBefore(first, at);
      rules.add(steps.get(at).after().get(steps.get(next).id()));
      between.add(0, steps.get(next).id());
      at = next;
    }
    rules.add(steps.get(at).after().get(steps.get(first).id()));
    rules.remove("");
    String text = rules.isEmpty() ? "the script's order" : "rule " + String.join(", ", rules);
    return between.isEmpty() ? text : text + " by way of " + String.join(", ", between);
  }

  private int directBefore(int first, int then) {
    for (int y = 0; y < steps.size(); y++) {
      if (steps.get(then).after().containsKey(steps.get(y).id()) && isBefore(first, y)) {
        return y;
      }
    }
    throw new IllegalArgumentException(
        steps.get(first).id() + " need not come before " + steps.get(then).id());
  }
}
