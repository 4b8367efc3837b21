package handwheel.scoring;

import handwheel.casualty.Casualty;
import handwheel.casualty.Step;
import handwheel.ship.Ship;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SortedMap;

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

  Marking(Casualty casualty, Ship ship, RunLog log, BrokenRules broken) {
    this.steps = casualty.response();
    this.log = log;
    this.finder = new Finder(ship, log);
    this.fates = new Fates(log);
    this.place = new PlaceRule(ship);
    this.broken = broken;
    this.precedence = new Precedence(steps);
    this.misses = new Misses(steps, ship, log);
  }

  Precedence precedence() {
    return precedence;
  }

  List<Mark> marks() {
    List<List<Base>> ways = steps.stream().map(this::ways).toList();
    List<Optional<Base>> chosen = Chooser.choose(ways, this::cost);
    List<Conflict> all = conflicts(chosen);
    SortedMap<Integer, Integer> shares = LeastBlame.shares(toBlame(all, chosen), left(chosen));
    List<Mark> marks = new ArrayList<>();
    for (int i = 0; i < steps.size(); i++) {
      marks.add(mark(i, chosen.get(i), shares, all));
    }
    return marks;
  }

  private Mark mark(
      int i, Optional<Base> base, SortedMap<Integer, Integer> shares, List<Conflict> all) {
    Step step = steps.get(i);
    Integer share = shares.get(i);
    return new Mark(
        i,
        step,
        base,
        base.isPresent() ? Optional.empty() : Optional.of(misses.of(step)),
        share == null ? OptionalInt.empty() : OptionalInt.of(share),
        all.stream().filter(c -> c.concerns(i)).toList(),
        isChargedByRule(base));
  }

  private List<Base> ways(Step step) {
    return finder.find(step).stream().map(act -> base(step, act)).toList();
  }

  private Base base(Step step, Act act) {
    Optional<PlaceFault> fault =
        place
            .judge(step, act)
            .map(f -> f.isUnsafe() && broken.areOfSending(act) ? f.chargedByRule() : f);
    return new Base(step, act, fault, Late.of(step, act, log), isMisheard(step, act));
  }

  private boolean isMisheard(Step step, Act act) {
    return step.test().accept(new Aims(log)).stream()
        .anyMatch(aim -> fates.isMisheardBefore(aim, act.instantTick()));
  }

  private int cost(List<Optional<Base>> chosen) {
    int points = chosen.stream().mapToInt(b -> b.map(Base::points).orElse(0)).sum();
    return points + LeastBlame.price(toBlame(conflicts(chosen), chosen), left(chosen));
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

  private boolean isChargedByRule(Optional<Base> base) {
    return base.filter(b -> broken.areOfAct(b.step(), b.act())).isPresent();
  }

  private static int[] left(List<Optional<Base>> chosen) {
    int[] left = new int[chosen.size()];
    Arrays.setAll(left, i -> chosen.get(i).map(Base::left).orElse(0));
    return left;
  }
}
