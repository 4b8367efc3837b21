package handwheel.proof;

import handwheel.casualty.Casualty;
import handwheel.casualty.Never;
import java.util.Collections;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Function;

/** Tries to break every rule, in run after run until each was broken. */
final class Rules {
  private final Casualty casualty;
  private final List<Base> bases;
  private final TreeSet<String> broken = new TreeSet<>();

  Rules(Casualty casualty, List<Base> bases) {
    this.casualty = casualty;
    this.bases = List.copyOf(bases);
  }

  /** Returns the ids of the rules that something broke. */
  SortedSet<String> broken() {
    return Collections.unmodifiableSortedSet(broken);
  }

  /** Plays what may break the rules; returns how many runs that were. */
  int tryAll(Function<List<Mutant>, List<Outcome>> play) {
    int played = 0;
    for (Base base : bases) {
      List<Mutant> harms = Harms.of(base, unbroken());
      List<Outcome> outcomes = play.apply(harms);
      for (int i = 0; i < harms.size(); i++) {
        harms.get(i).acts().stream().filter(outcomes.get(i)::isCharged).forEach(broken::add);
      }
      played += harms.size();
    }
    return played;
  }

  private List<Never> unbroken() {
    return casualty.nevers().stream().filter(n -> !broken.contains(n.id())).toList();
  }
}
