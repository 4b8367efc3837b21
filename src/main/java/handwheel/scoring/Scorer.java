package handwheel.scoring;

import handwheel.casualty.Casualty;
import handwheel.logbook.Entry;
import handwheel.ship.OrderText;
import handwheel.ship.Ship;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Scores a run from its entries. */
public final class Scorer {
  private static final int ALL_POINTS = 100;

  private final Casualty casualty;
  private final RunLog log;
  private final Movements movements;
  private final BrokenRules broken;
  private final Marking marking;

  private Scorer(Casualty casualty, Ship ship, List<Entry> entries) {
    this.casualty = casualty;
    this.log = new RunLog(entries, new OrderText(ship, casualty.messages()));
    this.movements = new Movements(ship, log);
    this.broken = new BrokenRules(casualty.nevers(), log);
    this.marking = new Marking(casualty, ship, log, broken);
  }

  /**
   * Scores a run.
   *
   * @param casualty the script it was run from
   * @param ship the ship it was run in
   * @param entries every entry of the run, in its order; a score among them is not looked at
   * @return the sheet
   */
  public static ScoreSheet score(Casualty casualty, Ship ship, List<Entry> entries) {
    return new Scorer(casualty, ship, entries).sheet();
  }

  private ScoreSheet sheet() {
    List<Mark> marks = marking.marks();
    RuleCharges rules = new RuleCharges(broken);
    Harmed harmed = new Harmed(log);
    CriticalSteps steps = new CriticalSteps(marks, marking.precedence());
    List<Charge> charges = limited(charges(marks, steps, rules, harmed));
    List<CriticalAct> critical = critical(marks, steps, rules, harmed);
    int points = ALL_POINTS - charges.stream().mapToInt(Charge::points).sum();
    boolean isPass =
        points >= casualty.passPoints() && critical.stream().noneMatch(CriticalAct::isFailure);
    return new ScoreSheet(
        points,
        isPass,
        charges,
        critical,
        marks.stream().map(m -> result(m, charges)).toList(),
        new Aftermath(log, movements, harmed).notes(charges, marks));
  }

  private List<Charge> charges(
      List<Mark> marks, CriticalSteps steps, RuleCharges rules, Harmed harmed) {
    StepCharges stepCharges = new StepCharges(marks, marking.precedence());
    List<Charge> all = new ArrayList<>();
    for (Mark mark : marks) {
      List<Charge> ofStep = stepCharges.of(mark);
      all.addAll(ofStep);
      if (ofStep.stream().noneMatch(Charge::isCritical)) {
        steps.unpaid(mark).ifPresent(all::add);
      }
    }
    casualty.nevers().stream().map(rules::of).flatMap(Optional::stream).forEach(all::add);
    casualty.outcomes().stream().map(harmed::charge).flatMap(Optional::stream).forEach(all::add);
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

  private List<CriticalAct> critical(
      List<Mark> marks, CriticalSteps steps, RuleCharges rules, Harmed harmed) {
    Stream<CriticalAct> ofSteps = marks.stream().map(steps::of).flatMap(Optional::stream);
    Stream<CriticalAct> ofRules =
        casualty.nevers().stream().filter(n -> Wording.isCritical(n.grade())).map(rules::critical);
    Stream<CriticalAct> ofOutcomes =
        casualty.outcomes().stream()
            .filter(o -> Wording.isCritical(o.grade()))
            .map(harmed::critical);
    return Stream.of(ofSteps, ofRules, ofOutcomes).flatMap(s -> s).toList();
  }

  private static StepResult result(Mark mark, List<Charge> charges) {
    String id = mark.step().id();
    int lost =
        charges.stream()
            .filter(c -> c.step().equals(id) && c.spot().equals(mark.step().grade().spot()))
            .mapToInt(Charge::points)
            .sum();
    Optional<Act> act = mark.base().map(Base::act);
    return new StepResult(
        id,
        act.isPresent(),
        mark.step().grade().points(),
        lost,
        act.map(Act::begunTick).orElse(StepResult.NEVER),
        act.map(Act::instantTick).orElse(StepResult.NEVER),
        act.map(Act::completeTick).orElse(StepResult.NEVER),
        act.map(a -> Deed.orders(a.deeds())).orElse(List.of()));
  }
}
