package handwheel.drill;

import handwheel.casualty.Casualty;
import handwheel.casualty.OutcomeRule;
import handwheel.logbook.Entry;
import handwheel.plant.StateWalker;
import java.util.List;

/** Watches for what must not come to pass; each outcome is logged once. */
final class Outcomes {
  private static final long CAME = -1;

  private final Scene scene;
  private final Facts facts;
  private final List<OutcomeRule.Came> rules;

  /** For how many ticks each condition has held; {@link #CAME} when it was logged. */
  private final long[] heldTicks;

  Outcomes(Scene scene, Casualty casualty, Facts facts) {
    this.scene = scene;
    this.facts = facts;
    this.rules =
        casualty.outcomes().stream()
            .filter(OutcomeRule.Came.class::isInstance)
            .map(OutcomeRule.Came.class::cast)
            .toList();
    this.heldTicks = new long[rules.size()];
  }

  void tick() {
    for (int i = 0; i < heldTicks.length; i++) {
      if (heldTicks[i] != CAME) {
        OutcomeRule.Came rule = rules.get(i);
        heldTicks[i] = facts.holds(rule.when()) ? heldTicks[i] + 1 : 0;
        if (heldTicks[i] > rule.when().forTicks()) {
          heldTicks[i] = CAME;
          came(rule);
        }
      }
    }
  }

  private void came(OutcomeRule.Came rule) {
    String what = rule.id().replace('-', ' ');
    scene.log(new Entry.Broke(scene.now, 0, rule.id(), what, facts.reading(rule.when())));
  }

  void walk(StateWalker walker) {
    for (int i = 0; i < heldTicks.length; i++) {
      walker.visit("outcome.held", heldTicks[i]);
    }
  }
}
