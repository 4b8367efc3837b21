package handwheel.scoring;

import handwheel.casualty.Casualty;
import handwheel.casualty.Step;
import handwheel.casualty.StepTest;
import handwheel.ship.Ship;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.function.ToIntFunction;

/**
 * Marks every step: when it was done, at which place, how late, and who is to blame for the order.
 */
final class Marking {
  private final List<Step> steps;
  private final RunLog log;
  private final Finder finder;
  private final Fates fates;
  private final PlaceRule place;
  private final BrokenRules broken;
  private final Precedence precedence;
  private final Misses misses;
  private final Starts starts;

  Marking(Casualty casualty, Ship ship, RunLog log, BrokenRules broken) {
    this.steps = casualty.response();
    this.log = log;
    this.finder = new Finder(ship, log);
    this.fates = new Fates(log);
    this.place = new PlaceRule(ship, log);
    this.broken = broken;
    this.precedence = new Precedence(steps);
    this.misses = new Misses(steps, ship, log);
    this.starts = new Starts(steps, ship, log);
  }

  Precedence precedence() {
    return precedence;
  }

  /**
   * Marks every step. Where a gauge was read more than once, the readings count that make the marks
   * least bad.
   *
   * @param badness of marks; less is better
   * @return a mark for each step, in the order of the script
   */
  List<Mark> best(ToIntFunction<List<Mark>> badness) {
    List<List<Base>> ways = steps.stream().map(this::ways).toList();
    List<Optional<Miss>> missed = new ArrayList<>();
    for (int i = 0; i < steps.size(); i++) {
      boolean isDone = !ways.get(i).isEmpty();
      missed.add(isDone ? Optional.empty() : Optional.of(miss(steps.get(i))));
    }
    return marks(Chooser.choose(ways, c -> badness.applyAsInt(marks(c, missed))), missed);
  }

  private List<Mark> marks(List<Optional<Base>> chosen, List<Optional<Miss>> missed) {
    List<Conflict> all = conflicts(chosen);
    List<Conflict> toBlame = toBlame(all, chosen);
    SortedMap<Integer, Integer> shares = LeastBlame.shares(toBlame, left(chosen));
    boolean[] isBlamed = LeastBlame.named(grave(toBlame), steps.size());
    List<Mark> marks = new ArrayList<>();
    for (int i = 0; i < steps.size(); i++) {
      int index = i;
      Integer share = shares.get(i);
      marks.add(
          new Mark(
              i,
              steps.get(i),
              chosen.get(i),
              missed.get(i),
              share == null ? OptionalInt.empty() : OptionalInt.of(share),
              all.stream().filter(c -> c.concerns(index)).toList(),
              isBlamed[i]));
    }
    return marks;
  }

  private Miss miss(Step step) {
    return finder.find(step).stream()
        .findFirst()
        .map(act -> misses.uncalled(step, act))
        .orElseGet(() -> misses.of(step));
  }

  /** What was done before its cue or phase called for it was not done for that. */
  private List<Base> ways(Step step) {
    return finder.from(starts.calledTick(step)).find(step).stream()
        .map(act -> base(step, act))
        .toList();
  }

  private Base base(Step step, Act act) {
    Optional<PlaceFault> fault =
        place
            .judge(step, act)
            .map(f -> f.isUnsafe() && broken.areOfSending(act) ? f.chargedByRule() : f);
    return new Base(step, act, fault, Late.of(step, act, starts), isMisheard(step, act));
  }

  private boolean isMisheard(Step step, Act act) {
    return step.test().accept(new Aims(log)).stream()
        .anyMatch(aim -> fates.isMisheardBefore(aim, act.instantTick()));
  }

  private List<Conflict> conflicts(List<Optional<Base>> chosen) {
    long[] ticks =
        chosen.stream()
            .mapToLong(b -> b.map(a -> a.act().instantTick()).orElse(StepResult.NEVER))
            .toArray();
    return Conflict.among(precedence, ticks);
  }

  /** An act that a broken rule charges already explains every conflict it is in. */
  private List<Conflict> toBlame(List<Conflict> all, List<Optional<Base>> chosen) {
    return all.stream()
        .filter(c -> !isChargedByRule(chosen.get(c.early())))
        .filter(c -> !isChargedByRule(chosen.get(c.late())))
        .toList();
  }

  /** What can fail a run: no look taken too early, for looking is free, and no preference. */
  private List<Conflict> grave(List<Conflict> conflicts) {
    return conflicts.stream()
        .filter(c -> precedence.isStrictlyBefore(c.late(), c.early()))
        .filter(c -> !(steps.get(c.early()).test() instanceof StepTest.ReadProof))
        .toList();
  }

  private boolean isChargedByRule(Optional<Base> base) {
    return base.filter(b -> broken.areOfAct(b.step(), b.act())).isPresent();
  }

  private static int[] left(List<Optional<Base>> chosen) {
    int[] left = new int[chosen.size()];
    Arrays.setAll(left, i -> chosen.get(i).map(Base::left).orElse(0));
    return left;
  }
}
