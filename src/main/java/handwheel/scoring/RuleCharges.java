package handwheel.scoring;

import handwheel.casualty.Grade;
import handwheel.casualty.Never;
import handwheel.casualty.When;
import handwheel.logbook.Entry;
import java.util.List;
import java.util.Optional;

/** What broken rules cost: each once, however often it was broken. */
final class RuleCharges {
  private final BrokenRules broken;

  RuleCharges(BrokenRules broken) {
    this.broken = broken;
  }

  Optional<Charge> of(Never never) {
    List<Entry.Broke> all = broken.of(never);
    return all.stream().findFirst().map(first -> charge(never, first, all.size()));
  }

  private static Charge charge(Never never, Entry.Broke first, int times) {
    Grade grade = never.grade();
    String often = times == 1 ? "" : " (" + times + " times, charged once)";
    return new Charge(
        grade.points(),
        ErrorClass.UNSAFE,
        never.id(),
        first.t(),
        reading(never, first),
        grade.spot(),
        Wording.why("Forbidden then: " + first.what() + often, should(never), grade),
        grade.basis(),
        Wording.isCritical(grade));
  }

  private static String reading(Never never, Entry.Broke broke) {
    String name = never.during().accept(new Forbidding());
    return name.isEmpty() ? broke.what() : name + " " + Seen.thousandths(broke.milli()) + " (SI)";
  }

  static String should(Never never) {
    if (never.act() instanceof Never.Moving m) {
      return m.fitting() + " not moved toward " + (m.isOpening() ? "open" : "shut");
    }
    Never.Sending s = (Never.Sending) never.act();
    String who = s.who().equals("anyone") ? "nobody" : "not " + s.who();
    return who + " sent to " + String.join(", ", s.places());
  }

  CriticalAct critical(Never never) {
    Optional<Entry.Broke> first = broken.of(never).stream().findFirst();
    return first
        .map(
            b ->
                new CriticalAct(
                    never.id(), CriticalAct.Standing.NOT_MET, b.t(), "broken: " + b.what()))
        .orElse(
            new CriticalAct(never.id(), CriticalAct.Standing.MET, StepResult.NEVER, "rule kept"));
  }

  /** The name of the value a rule looks at; empty where it looks at none. */
  private static final class Forbidding implements When.Visitor<String> {
    @Override
    public String plantIs(When.PlantIs when) {
      return when.truth().id();
    }

    @Override
    public String gaugeIs(When.GaugeIs when) {
      return when.gauge();
    }

    @Override
    public String reportPassed(When.ReportPassed when) {
      return "";
    }

    @Override
    public String cueGiven(When.CueGiven when) {
      return "";
    }

    @Override
    public String countDone(When.CountDone when) {
      return "";
    }

    @Override
    public String drawnIs(When.DrawnIs when) {
      return "";
    }

    @Override
    public String all(When.All when) {
      return when.parts().stream()
          .map(part -> part.accept(this))
          .filter(name -> !name.isEmpty())
          .findFirst()
          .orElse("");
    }
  }
}
