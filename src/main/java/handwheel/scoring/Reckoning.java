package handwheel.scoring;

import handwheel.casualty.Casualty;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Adds up what marked steps, broken rules and harm cost, and says whether the run passes. */
final class Reckoning {
  private static final int ALL_POINTS = 100;

  /** More than all points: a run that passes is always the better one. */
  private static final int FAILED = 1_000;

  private final Casualty casualty;
  private final Precedence precedence;
  private final RuleCharges rules;
  private final Outcomes outcomes;

  Reckoning(Casualty casualty, Precedence precedence, RuleCharges rules, Outcomes outcomes) {
    this.casualty = casualty;
    this.precedence = precedence;
    this.rules = rules;
    this.outcomes = outcomes;
  }

  /**
   * What came out.
   *
   * @param charges every charge, in the order of the script
   * @param critical every critical act, in the order of the script
   * @param points 0 to 100
   * @param isPass whether the run passes
   */
  record Result(List<Charge> charges, List<CriticalAct> critical, int points, boolean isPass) {
    /** The less the better; first whether the run passes, then the points. */
    int badness() {
      return ALL_POINTS - points + (isPass ? 0 : FAILED);
    }
  }

  Result of(List<Mark> marks) {
    CriticalSteps steps = new CriticalSteps(marks, precedence);
    List<Charge> charges = limited(charges(marks, steps));
    List<CriticalAct> critical = critical(marks, steps);
    int points = ALL_POINTS - charges.stream().mapToInt(Charge::points).sum();
    boolean isPass =
        points >= casualty.passPoints() && critical.stream().noneMatch(CriticalAct::isFailure);
    return new Result(charges, critical, points, isPass);
  }

  private List<Charge> charges(List<Mark> marks, CriticalSteps steps) {
    StepCharges stepCharges = new StepCharges(marks, precedence);
    List<Charge> all = new ArrayList<>();
    for (Mark mark : marks) {
      List<Charge> ofStep = stepCharges.of(mark);
      all.addAll(ofStep);
      if (ofStep.stream().noneMatch(Charge::isCritical)) {
        steps.unpaid(mark).ifPresent(all::add);
      }
    }
    casualty.nevers().stream().map(rules::of).flatMap(Optional::stream).forEach(all::add);
    casualty.outcomes().stream().map(outcomes::charge).flatMap(Optional::stream).forEach(all::add);
    return all;
  }

  /** Nobody can lose more than all: the last charges are cut to what is left. */
  private static List<Charge> limited(List<Charge> charges) {
    List<Charge> all = new ArrayList<>();
    int left = ALL_POINTS;
    for (Charge c : charges) {
      String cut = " Worth " + c.points() + ", but only " + left + " were left to lose.";
      Charge kept = c.points() > left ? c.withPoints(left, cut) : c;
      all.add(kept);
      left -= kept.points();
    }
    return all;
  }

  private List<CriticalAct> critical(List<Mark> marks, CriticalSteps steps) {
    Stream<CriticalAct> ofSteps = marks.stream().map(steps::of).flatMap(Optional::stream);
    Stream<CriticalAct> ofRules =
        casualty.nevers().stream().filter(n -> Wording.isCritical(n.grade())).map(rules::critical);
    Stream<CriticalAct> ofOutcomes =
        casualty.outcomes().stream()
            .filter(o -> Wording.isCritical(o.grade()))
            .map(outcomes::critical);
    return Stream.of(ofSteps, ofRules, ofOutcomes).flatMap(s -> s).toList();
  }
}
