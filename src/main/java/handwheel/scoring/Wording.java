package handwheel.scoring;

import handwheel.casualty.Basis;
import handwheel.casualty.Grade;
import handwheel.casualty.Step;

/** The sentences of a charge: what happened, what should have, the reason, the rule. */
final class Wording {
  /** What stands between what happened and what should have. */
  static final String SHOULD = " Should have been: ";

  private Wording() {}

  static String why(String happened, String should, Grade grade) {
    String rule = grade.rule().isEmpty() ? "" : " Rule " + grade.rule() + ".";
    return sentence(happened) + SHOULD + sentence(should) + " " + grade.why() + rule;
  }

  private static String sentence(String text) {
    return text.endsWith(".") ? text : text + ".";
  }

  /** What a step asks for, with its times and its side. */
  static String should(Step step) {
    StringBuilder text = new StringBuilder(step.test().accept(new Wanted()));
    step.within().ifPresent(w -> text.append(", begun within ").append(Late.text(w)));
    step.done().ifPresent(w -> text.append(", complete within ").append(Late.text(w)));
    step.place().ifPresent(s -> text.append(", ").append(PlaceRule.words(s)));
    return text.toString();
  }

  /** A charge on a figure of the model alone never fails a run. */
  static boolean isCritical(Grade grade) {
    return grade.isCritical() && grade.basis() != Basis.MODEL_ONLY;
  }
}
