package handwheel.app;

import handwheel.debrief.Debrief;
import handwheel.debrief.Scripts;
import handwheel.logbook.Entry;
import java.util.List;
import java.util.Optional;

/** What to do after a debrief: those seconds again, that first minute again, another branch. */
final class NextDrills {
  private static final long OTHER_SEED = 1;

  private NextDrills() {}

  static List<String> actions(DebriefCommand.Read read, Drills drills) {
    Entry.Run run = (Entry.Run) read.entries().get(0);
    return List.of(
        "Those 20 seconds again, as text: `handwheel debrief "
            + read.path()
            + " --at "
            + Debrief.TURNED
            + "`.",
        "The first minute again, now: `handwheel drill "
            + run.script()
            + " --seed "
            + run.seed()
            + "`; leave it after a minute.",
        next(read.found(), run, drills));
  }

  private static String next(Scripts.Found found, Entry.Run run, Drills drills) {
    Optional<String> sibling = drills.sibling(found.casualty().id(), found.casualty().family());
    return sibling
        .map(s -> "Then the other branch: `handwheel drill " + s + "`.")
        .orElse(
            "Then the same casualty drawn anew: `handwheel drill "
                + run.script()
                + " --seed "
                + (run.seed() + OTHER_SEED)
                + "`. There is no other drill of its family here.");
  }
}
