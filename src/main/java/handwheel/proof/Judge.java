package handwheel.proof;

import handwheel.casualty.Casualty;
import handwheel.casualty.OutcomeRule;
import handwheel.casualty.Step;
import handwheel.diagnostics.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;

/** Compares what came of mutants with what had to come of them. */
final class Judge {
  private static final int ALL_POINTS = 100;

  private final Casualty casualty;
  private final List<Finding> findings = new ArrayList<>();

  Judge(Casualty casualty) {
    this.casualty = casualty;
  }

  List<Finding> findings() {
    return List.copyOf(findings);
  }

  /** Judges slips and wrong acts one by one. */
  void each(List<Mutant> mutants, List<Outcome> outcomes) {
    for (int i = 0; i < mutants.size(); i++) {
      Mutant mutant = mutants.get(i);
      Outcome outcome = outcomes.get(i);
      boolean isNamed =
          mutant.acts().stream().anyMatch(outcome::isCharged) || isAgainstARule(outcome);
      if (mutant.expected() == Mutant.Expected.CHARGED && !isNamed) {
        findings.add(
            ProofId.MISTAKE_NOT_CHARGED.at(
                mutant.spot(),
                mutant.what() + " costs nothing on " + quoted(mutant.acts()),
                "Make the step ask for what the order does."));
      }
      if (mutant.expected() == Mutant.Expected.FREE && outcome.sheet().points() < ALL_POINTS) {
        findings.add(
            ProofId.HARMLESS_CHARGED.at(
                mutant.spot(),
                mutant.what() + " is harmless and costs points on " + quoted(outcome.charged()),
                "Loosen what the step or rule asks for."));
      }
    }
  }

  /** One act that is against a rule and out of order is charged once, on the rule. */
  private boolean isAgainstARule(Outcome outcome) {
    return casualty.nevers().stream().anyMatch(n -> outcome.isCharged(n.id()));
  }

  /** Every point must be lost by some mistake. */
  void points(List<Mutant> mutants, List<Outcome> outcomes) {
    for (Step step : casualty.response()) {
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

  /** What must not come to pass has to come to pass in something that was tried. */
  void outcomes(Set<String> came) {
    casualty.outcomes().stream()
        .filter(o -> o instanceof OutcomeRule.Came && !came.contains(o.id()))
        .map(
            o ->
                ProofId.UNBROKEN_RULE.at(
                    o.grade().spot(),
                    "nothing that was tried comes to `" + o.id() + "`",
                    "Look at a run in which nothing is ordered whether its `when` can hold."))
        .forEach(findings::add);
  }

  /** Every rule has to be broken by something that was tried. */
  void rules(Set<String> broken) {
    casualty.nevers().stream()
        .filter(never -> !broken.contains(never.id()))
        .map(
            never ->
                ProofId.UNBROKEN_RULE.at(
                    never.grade().spot(),
                    "no order that was tried breaks `" + never.id() + "`",
                    "Look whether its `while` can hold when somebody could do it."))
        .forEach(findings::add);
  }

  /** Lines of the witness that serve nothing in any run they are said in. */
  void needed(List<Mutant> mutants, List<Outcome> outcomes) {
    TreeSet<String> needed = new TreeSet<>();
    for (int i = 0; i < mutants.size(); i++) {
      if (outcomes.get(i).sheet().points() < ALL_POINTS) {
        needed.add(mutants.get(i).what());
      }
    }
    mutants.stream()
        .filter(m -> m.what().startsWith(Slips.DROP) && needed.add(m.what()))
        .map(
            m ->
                ProofId.ORDER_NOT_NEEDED.at(
                    m.spot(),
                    m.what() + ": the witness earns all points without it",
                    "Take the line out, or leave it for people who read the script."))
        .forEach(findings::add);
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
