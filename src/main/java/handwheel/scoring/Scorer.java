package handwheel.scoring;

import handwheel.casualty.Casualty;
import handwheel.logbook.Entry;
import handwheel.ship.OrderText;
import handwheel.ship.Ship;
import java.util.List;
import java.util.Optional;

/** Scores a run from its entries. */
public final class Scorer {
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
    Harmed harmed = new Harmed(log);
    RuleCharges rules = new RuleCharges(casualty.nevers(), broken);
    Reckoning reckoning = new Reckoning(casualty, marking.precedence(), rules, new Outcomes(log));
    List<Mark> marks = marking.best(m -> reckoning.of(m).badness());
    Reckoning.Result result = reckoning.of(marks);
    return new ScoreSheet(
        result.points(),
        result.isPass(),
        result.charges(),
        result.critical(),
        marks.stream().map(m -> result(m, result.charges())).toList(),
        new Aftermath(log, movements, harmed).notes(result.charges(), marks));
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
