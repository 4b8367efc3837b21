package handwheel.reader;

import handwheel.casualty.Phase;
import handwheel.casualty.When;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds circles of phases whose ways all need no time and whose conditions can hold together: a run
 * that enters one never leaves it.
 */
final class Livelocks {
  private final List<Phase> phases;
  private final List<List<String>> found = new ArrayList<>();

  private Livelocks(List<Phase> phases) {
    this.phases = phases;
  }

  /** Returns the circles, each from the phase that stands first in the script. */
  static List<List<String>> of(List<Phase> phases) {
    Livelocks livelocks = new Livelocks(phases);
    for (int i = 0; i < phases.size() && livelocks.found.isEmpty(); i++) {
      livelocks.walk(phases.get(i), List.of(phases.get(i).id()), List.of());
    }
    return livelocks.found;
  }

  private void walk(Phase here, List<String> path, List<When> held) {
    for (Phase.Transition way : here.next()) {
      boolean isInstant = way.afterS().isEmpty() && way.when().filter(Livelocks::isHeld).isEmpty();
      if (!isInstant || !found.isEmpty()) {
        continue;
      }
      List<When> all = new ArrayList<>(held);
      way.when().ifPresent(all::add);
      if (way.to().equals(path.get(0))) {
        if (Compatible.together(all)) {
          found.add(path);
        }
      } else if (!path.contains(way.to())) {
        Optional<Phase> next = phases.stream().filter(p -> p.id().equals(way.to())).findFirst();
        List<String> longer = new ArrayList<>(path);
        longer.add(way.to());
        next.ifPresent(n -> walk(n, longer, all));
      }
    }
  }

  /** A condition that has to hold for a while takes time. */
  private static boolean isHeld(When when) {
    long ticks =
        when instanceof When.PlantIs p
            ? p.forTicks()
            : when instanceof When.GaugeIs g ? g.forTicks() : 0;
    return ticks > 0;
  }
}
