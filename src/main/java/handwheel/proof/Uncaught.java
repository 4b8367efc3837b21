package handwheel.proof;

import handwheel.casualty.Step;
import java.util.ArrayList;
import java.util.List;

/** Wrong repeat-backs that are let pass: the man does what he repeated. */
final class Uncaught {
  private static final String BELAY = "belay ";

  private Uncaught() {}

  /** Whether an order takes back another; that is judged with the order it takes back. */
  static boolean isBelay(Base base, int index) {
    return base.say(index).startsWith(BELAY);
  }

  /**
   * Returns a mutant for each wrong repeat-back of the run in which the order that was said again
   * earns points: neither the belaying nor the order again is said.
   */
  static List<Mutant> of(Base base) {
    List<Mutant> mutants = new ArrayList<>();
    for (int i = 0; i < base.orders(); i++) {
      String who = base.say(i).startsWith(BELAY) ? base.say(i).substring(BELAY.length()) : "";
      int again = who.isEmpty() ? -1 : again(base, i, who + " ");
      if (again > 0 && !base.served(again).isEmpty()) {
        mutants.add(letPass(base, i, again));
      }
    }
    return mutants;
  }

  private static int again(Base base, int belayed, String start) {
    for (int i = belayed + 1; i < base.orders(); i++) {
      if (base.say(i).startsWith(start)) {
        return i;
      }
    }
    return -1;
  }

  private static Mutant letPass(Base base, int belayed, int again) {
    String name = "let a wrong repeat-back pass: `" + base.say(again) + "`";
    Alteration alteration = (i, say) -> i == belayed || i == again ? List.of() : Slips.said(say);
    return new Mutant(
        name,
        Mutant.Expected.CHARGED,
        base.served(again).stream().map(Step::id).toList(),
        base.spot(again),
        base.altered(name, alteration));
  }
}
