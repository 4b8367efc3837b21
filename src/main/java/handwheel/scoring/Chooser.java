package handwheel.scoring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.ToIntFunction;

/**
 * Chooses, for each step that was done in more than one way, the way that costs the trainee least
 * in all; of equal ones the earliest. Only a gauge that was read more than once leaves a choice:
 * looking again must never cost anything.
 */
final class Chooser {
  /** Most choices tried together; beyond it the later proofs count from their first reading. */
  private static final int CHOICES_MAX = 512;

  private final ToIntFunction<List<Optional<Base>>> cost;
  private List<Optional<Base>> best = List.of();
  private int bestCost = Integer.MAX_VALUE;

  private Chooser(ToIntFunction<List<Optional<Base>>> cost) {
    this.cost = cost;
  }

  /**
   * Chooses.
   *
   * @param ways for each step the ways it was done, earliest first
   * @param cost points lost on all steps together
   * @return for each step the way that counts
   */
  static List<Optional<Base>> choose(
      List<List<Base>> ways, ToIntFunction<List<Optional<Base>>> cost) {
    Chooser chooser = new Chooser(cost);
    chooser.tryFrom(limited(ways), new ArrayList<>());
    return chooser.best;
  }

  private void tryFrom(List<List<Base>> ways, List<Optional<Base>> chosen) {
    if (chosen.size() == ways.size()) {
      compare(List.copyOf(chosen));
      return;
    }
    for (Optional<Base> way : orNone(ways.get(chosen.size()))) {
      chosen.add(way);
      tryFrom(ways, chosen);
      chosen.remove(chosen.size() - 1);
    }
  }

  private void compare(List<Optional<Base>> chosen) {
    int points = cost.applyAsInt(chosen);
    if (points < bestCost) {
      bestCost = points;
      best = chosen;
    }
  }

  private static List<Optional<Base>> orNone(List<Base> ways) {
    return ways.isEmpty() ? List.of(Optional.empty()) : ways.stream().map(Optional::of).toList();
  }

  private static List<List<Base>> limited(List<List<Base>> ways) {
    List<List<Base>> kept = new ArrayList<>();
    int choices = 1;
    for (List<Base> way : ways) {
      List<Base> different = different(way, ways);
      boolean isTooMany = choices * Math.max(1, different.size()) > CHOICES_MAX;
      List<Base> some = isTooMany ? different.subList(0, 1) : different;
      choices *= Math.max(1, some.size());
      kept.add(some);
    }
    return kept;
  }

  /** Drops every reading that stands to all other acts as the one before it does. */
  private static List<Base> different(List<Base> way, List<List<Base>> ways) {
    List<Base> kept = new ArrayList<>();
    SortedSet<String> seen = new TreeSet<>();
    for (Base base : way) {
      if (seen.add(standing(base, ways))) {
        kept.add(base);
      }
    }
    return kept;
  }

  private static String standing(Base base, List<List<Base>> ways) {
    StringBuilder text = new StringBuilder();
    for (List<Base> others : ways) {
      for (Base other : others) {
        long apart = base.act().instantTick() - other.act().instantTick();
        boolean isFar = Math.abs(apart) > Precedence.PREFERENCE_TICKS;
        text.append(other.step().equals(base.step()) ? 0 : Long.signum(apart) * (isFar ? 2 : 1));
        text.append(' ');
      }
    }
    return text.toString();
  }
}
