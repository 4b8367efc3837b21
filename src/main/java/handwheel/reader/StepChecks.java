package handwheel.reader;

import handwheel.casualty.Casualty;
import handwheel.casualty.Never;
import handwheel.casualty.Step;
import handwheel.casualty.StepTest;
import handwheel.casualty.When;
import java.util.List;
import java.util.Optional;

/** Checks each step against the other steps, the rules and the cautions. */
final class StepChecks {
  private final Casualty casualty;
  private final Findings findings;

  StepChecks(Casualty casualty, Findings findings) {
    this.casualty = casualty;
    this.findings = findings;
  }

  void check() {
    for (Step step : casualty.response()) {
      same(step);
      if (step.grade().points() == 0) {
        findings.add(
            FindingId.NO_POINTS,
            step.grade().spot(),
            "step " + Say.quoted(step.id()) + " is worth no points; nobody can lose it",
            "Give it points, or take it out.");
      }
      hazard(step)
          .filter(n -> casualty.cautions().stream().noneMatch(c -> c.before().contains(step.id())))
          .ifPresent(n -> uncautioned(step, n));
    }
  }

  private void same(Step step) {
    casualty.response().stream()
        .takeWhile(s -> !s.equals(step))
        .filter(s -> s.test().equals(step.test()) && s.within().equals(step.within()))
        .findFirst()
        .ifPresent(
            s ->
                findings.add(
                    FindingId.SAME_STEP,
                    step.grade().spot(),
                    "step " + Say.quoted(step.id()) + " asks for the same as " + Say.quoted(s.id()),
                    "Take one out, or let them differ."));
  }

  /**
   * Returns the critical rule that forbids the step's own movement while the plant is not ready.
   */
  private Optional<Never> hazard(Step step) {
    if (!(step.test() instanceof StepTest.FittingIs test)) {
      return Optional.empty();
    }
    return casualty.nevers().stream()
        .filter(n -> n.grade().isCritical() && isPhysical(n.during()))
        .filter(
            n ->
                n.act() instanceof Never.Moving m
                    && m.isOpening() == test.isOpen()
                    && test.fittings().contains(m.fitting()))
        .findFirst();
  }

  private static boolean isPhysical(When when) {
    return when instanceof When.PlantIs
        || (when instanceof When.All all && all.parts().stream().anyMatch(StepChecks::isPhysical));
  }

  private void uncautioned(Step step, Never never) {
    String words =
        "step "
            + Say.quoted(step.id())
            + " moves what "
            + Say.quoted(never.id())
            + " forbids to move too early; no caution stands before it";
    List<String> cautions = casualty.cautions().stream().map(c -> c.id()).toList();
    findings.add(
        FindingId.STEP_WITHOUT_CAUTION,
        step.grade().spot(),
        words,
        cautions.isEmpty()
            ? "Add a caution with `before: [" + step.id() + "]`."
            : "Add one, or name the step in the `before` of one of " + Say.quoted(cautions) + ".");
  }
}
