package handwheel.scoring;

import handwheel.casualty.Grade;
import handwheel.casualty.OutcomeRule;
import handwheel.logbook.Entry;
import java.util.Optional;

/** What outcomes cost: people who came to harm, and what else must not come to pass. */
final class Outcomes {
  private final RunLog log;
  private final Harmed harmed;

  Outcomes(RunLog log) {
    this.log = log;
    this.harmed = new Harmed(log);
  }

  Optional<Charge> charge(OutcomeRule rule) {
    return rule instanceof OutcomeRule.People people
        ? harmed.charge(people)
        : came((OutcomeRule.Came) rule).map(e -> charge((OutcomeRule.Came) rule, e));
  }

  CriticalAct critical(OutcomeRule rule) {
    return rule instanceof OutcomeRule.People people
        ? harmed.critical(people)
        : critical((OutcomeRule.Came) rule);
  }

  private Optional<Entry.Broke> came(OutcomeRule.Came rule) {
    return log.all(Entry.Broke.class).filter(b -> b.never().equals(rule.id())).findFirst();
  }

  private static Charge charge(OutcomeRule.Came rule, Entry.Broke came) {
    Grade grade = rule.grade();
    return new Charge(
        grade.points(),
        ErrorClass.HARM,
        rule.id(),
        came.t(),
        RuleCharges.reading(rule.when(), came),
        grade.spot(),
        Wording.why("It came to this: " + came.what(), "not this", grade),
        grade.basis(),
        Wording.isCritical(grade));
  }

  private CriticalAct critical(OutcomeRule.Came rule) {
    Optional<Entry.Broke> came = came(rule);
    return new CriticalAct(
        rule.id(),
        came.isPresent() ? CriticalAct.Standing.NOT_MET : CriticalAct.Standing.MET,
        came.map(Entry.Broke::t).orElse(StepResult.NEVER),
        came.isPresent() ? "it came to this" : "it did not come to this");
  }
}
