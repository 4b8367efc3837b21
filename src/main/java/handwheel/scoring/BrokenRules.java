package handwheel.scoring;

import handwheel.casualty.Never;
import handwheel.casualty.Step;
import handwheel.casualty.StepTest;
import handwheel.logbook.Entry;
import java.util.List;

/** Which rules were broken, and by which steps' acts. */
final class BrokenRules {
  private final List<Never> nevers;
  private final RunLog log;

  BrokenRules(List<Never> nevers, RunLog log) {
    this.nevers = List.copyOf(nevers);
    this.log = log;
  }

  /** Every time a rule was broken. */
  List<Entry.Broke> of(Never never) {
    return log.all(Entry.Broke.class).filter(b -> b.never().equals(never.id())).toList();
  }

  /** Whether a broken rule already charges the act that did a step. */
  boolean areOfAct(Step step, Act act) {
    return nevers.stream()
        .anyMatch(
            never -> of(never).stream().anyMatch(b -> isSame(b, act) || movesIt(never, step)));
  }

  /** Whether the order that did a step sent somebody where a broken rule forbids. */
  boolean areOfSending(Act act) {
    return nevers.stream()
        .filter(never -> never.act() instanceof Never.Sending)
        .anyMatch(never -> of(never).stream().anyMatch(b -> isSame(b, act)));
  }

  private static boolean isSame(Entry.Broke broke, Act act) {
    return broke.n() > 0 && act.deeds().stream().anyMatch(d -> d.isByOrder(broke.n()));
  }

  private static boolean movesIt(Never never, Step step) {
    return never.act() instanceof Never.Moving m
        && step.test() instanceof StepTest.FittingIs f
        && f.isOpen() == m.isOpening()
        && f.fittings().contains(m.fitting());
  }
}
