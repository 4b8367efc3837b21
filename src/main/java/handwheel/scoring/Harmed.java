package handwheel.scoring;

import handwheel.casualty.Grade;
import handwheel.casualty.OutcomeRule;
import handwheel.logbook.Entry;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Who came to harm, and what that costs. Each person counts once; who is down is hurt as well. */
final class Harmed {
  private final RunLog log;

  Harmed(RunLog log) {
    this.log = log;
  }

  /** The entry at which each person first came to that harm, in order of time. */
  List<Entry.Person> people(OutcomeRule.Harm harm) {
    Set<String> seen = new TreeSet<>();
    List<Entry.Person> all = new ArrayList<>();
    log.all(Entry.Person.class)
        .filter(p -> is(harm, p.is()))
        .filter(p -> seen.add(p.who()))
        .forEach(all::add);
    return all;
  }

  private static boolean is(OutcomeRule.Harm harm, String word) {
    return switch (harm) {
      case HURT -> word.equals("hurt") || word.equals("down");
      case DOWN -> word.equals("down");
    };
  }

  Optional<Charge> charge(OutcomeRule.People rule) {
    List<Entry.Person> people = people(rule.harm());
    return people.size() > rule.above() ? Optional.of(charge(rule, people)) : Optional.empty();
  }

  private static Charge charge(OutcomeRule.People rule, List<Entry.Person> people) {
    Grade grade = rule.grade();
    String most = rule.above() == 0 ? "nobody" : "at most " + rule.above();
    return new Charge(
        grade.points(),
        ErrorClass.HARM,
        rule.id(),
        people.get(rule.above()).t(),
        reading(people),
        grade.spot(),
        Wording.why(
            people.size() + " " + rule.harm().word(), most + " " + rule.harm().word(), grade),
        grade.basis(),
        Wording.isCritical(grade));
  }

  private static String reading(List<Entry.Person> people) {
    return String.join(
        ", ", people.stream().map(p -> p.who() + " dose " + Seen.thousandths(p.dose())).toList());
  }

  CriticalAct critical(OutcomeRule.People rule) {
    Optional<Charge> charge = charge(rule);
    return new CriticalAct(
        rule.id(),
        charge.isPresent() ? CriticalAct.Standing.NOT_MET : CriticalAct.Standing.MET,
        charge.map(Charge::tick).orElse(StepResult.NEVER),
        people(rule.harm()).size() + " " + rule.harm().word());
  }

  /** One note a person: down, or else hurt. */
  Stream<Note> notes() {
    List<Entry.Person> down = people(OutcomeRule.Harm.DOWN);
    return people(OutcomeRule.Harm.HURT).stream()
        .map(
            p ->
                down.stream()
                    .filter(d -> d.who().equals(p.who()))
                    .findFirst()
                    .map(d -> note(d, Note.Kind.DOWN))
                    .orElse(note(p, Note.Kind.HURT)));
  }

  private static Note note(Entry.Person p, Note.Kind kind) {
    String text = p.who() + " is " + p.is() + ", dose " + Seen.thousandths(p.dose());
    return new Note(p.t(), kind, "", text);
  }
}
