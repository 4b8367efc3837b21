package handwheel.scoring;

import handwheel.casualty.Grade;
import handwheel.casualty.Never;
import handwheel.casualty.When;
import handwheel.logbook.Entry;
import java.util.List;
import java.util.Optional;

/** What broken rules cost: each once, however often it was broken. */
final class RuleCharges {
  private final List<Never> nevers;
  private final BrokenRules broken;

  RuleCharges(List<Never> nevers, BrokenRules broken) {
    this.nevers = List.copyOf(nevers);
    this.broken = broken;
  }

  /** What a rule costs; nothing more than the verdict where a dearer rule charges the same act. */
  Optional<Charge> of(Never never) {
    List<Entry.Broke> all = broken.of(never);
    return all.stream()
        .findFirst()
        .map(first -> charge(never, first, all.size()))
        .map(c -> dearer(never, all).map(d -> shared(c, d)).orElse(c));
  }

  private static Charge shared(Charge charge, Never dearer) {
    return charge.withPoints(0, " The same act is charged with `" + dearer.id() + "`.");
  }

  /** The rule that charges every act that broke this one: dearer, or as dear and before it. */
  private Optional<Never> dearer(Never never, List<Entry.Broke> all) {
    return nevers.stream()
        .filter(other -> isDearer(other, never))
        .filter(other -> all.stream().allMatch(b -> isOfSameAct(b, other)))
        .findFirst();
  }

  private boolean isDearer(Never other, Never never) {
    int more = other.grade().points() - never.grade().points();
    return more > 0 || (more == 0 && nevers.indexOf(other) < nevers.indexOf(never));
  }

  private boolean isOfSameAct(Entry.Broke broke, Never other) {
    return broke.n() > 0 && broken.of(other).stream().anyMatch(o -> o.n() == broke.n());
  }

  private static Charge charge(Never never, Entry.Broke first, int times) {
    Grade grade = never.grade();
    String often = times == 1 ? "" : " (" + times + " times, charged once)";
    return new Charge(
        grade.points(),
        ErrorClass.UNSAFE,
        never.id(),
        first.t(),
        reading(never.during(), first),
        grade.spot(),
        Wording.why("Forbidden then: " + first.what() + often, should(never), grade),
        grade.basis(),
        Wording.isCritical(grade));
  }

  /** The value a condition looked at, as it was. */
  static String reading(When during, Entry.Broke broke) {
    String name = during.accept(new Forbidding());
    if (name.isEmpty()) {
      return broke.what();
    }
    String unit = name.startsWith("leak.") ? " kg/s" : isFlag(broke) ? "" : " (SI)";
    return name + " " + Seen.thousandths(broke.milli()) + unit;
  }

  private static boolean isFlag(Entry.Broke broke) {
    return broke.milli() == 0 || broke.milli() == 1000;
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
