package handwheel.proof;

import handwheel.casualty.Never;
import handwheel.casualty.Step;
import handwheel.diagnostics.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** Compares what came of mutants with what had to come of them. */
final class Judge {
  private final Base base;
  private final List<Finding> findings = new ArrayList<>();

  Judge(Base base) {
    this.base = base;
  }

  List<Finding> findings() {
    return List.copyOf(findings);
  }

  /** Judges slips and wrong acts one by one. */
  void each(List<Mutant> mutants, List<Outcome> outcomes) {
    for (int i = 0; i < mutants.size(); i++) {
      Mutant mutant = mutants.get(i);
      Outcome outcome = outcomes.get(i);
      boolean isNamed = mutant.acts().stream().anyMatch(outcome::isCharged);
      if (mutant.expected() == Mutant.Expected.CHARGED && !isNamed) {
        findings.add(
            ProofId.MISTAKE_NOT_CHARGED.at(
                mutant.spot(),
                mutant.what() + " costs nothing on " + quoted(mutant.acts()),
                "Make the step ask for what the order does."));
      }
      if (mutant.expected() == Mutant.Expected.FREE && outcome.sheet().points() < 100) {
        findings.add(
            ProofId.HARMLESS_CHARGED.at(
                mutant.spot(),
                mutant.what() + " is harmless and costs points on " + quoted(outcome.charged()),
                "Loosen what the step or rule asks for."));
      }
    }
  }

  /** Every point must be lost by some mistake. */
  void points(List<Mutant> mutants, List<Outcome> outcomes) {
    for (Step step : base.casualty().response()) {
      int most =
          IntStream.range(0, mutants.size())
              .filter(i -> mutants.get(i).acts().contains(step.id()))
              .map(i -> outcomes.get(i).lost(step.id()))
              .max()
              .orElse(0);
      if (most < step.grade().points()) {
        findings.add(
            ProofId.UNLOSABLE_POINTS.at(
                step.grade().spot(),
                "step `"
                    + step.id()
                    + "` is worth "
                    + step.grade().points()
                    + " points; no mistake that was tried loses more than "
                    + most,
                "Let the witness do the step by one order of its own."));
      }
    }
  }

  /** Of the orders that may break a rule one has to. */
  void rules(List<Mutant> mutants, List<Outcome> outcomes) {
    for (Never never : base.casualty().nevers()) {
      boolean isBroken =
          IntStream.range(0, mutants.size())
              .filter(i -> mutants.get(i).acts().contains(never.id()))
              .anyMatch(i -> outcomes.get(i).isCharged(never.id()));
      if (!isBroken) {
        findings.add(
            ProofId.UNBROKEN_RULE.at(
                never.grade().spot(),
                "no order that was tried breaks `" + never.id() + "`",
                "Look whether its `while` can hold when somebody could do it."));
      }
    }
  }

  /** Lines of the witness that serve nothing. */
  void needed(List<Mutant> mutants, List<Outcome> outcomes) {
    for (int i = 0; i < mutants.size(); i++) {
      boolean isDrop = mutants.get(i).what().startsWith("drop");
      if (isDrop && outcomes.get(i).sheet().points() == 100) {
        findings.add(
            ProofId.ORDER_NOT_NEEDED.at(
                mutants.get(i).spot(),
                mutants.get(i).what() + ": the witness earns all points without it",
                "Take the line out, or leave it for people who read the script."));
      }
    }
  }

  /** No short list may pass. */
  void cheap(List<Mutant> tries, List<Outcome> outcomes) {
    for (int i = 0; i < tries.size(); i++) {
      if (outcomes.get(i).sheet().isPass()) {
        List<String> orders = outcomes.get(i).orders().stream().map(o -> o.say()).toList();
        findings.add(
            ProofId.CHEAP_WIN.at(
                tries.get(i).spot(),
                "a run passes with " + tries.get(i).what() + ": " + quoted(orders),
                "Make the step ask for more, or take `critical` out."));
        return;
      }
    }
  }

  private static String quoted(List<String> words) {
    return words.isEmpty()
        ? "nothing"
        : String.join(", ", words.stream().map(w -> "`" + w + "`").toList());
  }
}
