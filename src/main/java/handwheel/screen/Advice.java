package handwheel.screen;

import handwheel.casualty.Caution;
import java.util.ArrayList;
import java.util.List;

/**
 * The next step, as it is offered.
 *
 * @param order the order in full
 * @param why its reason; may be empty
 * @param cautions what belongs before it
 */
record Advice(String order, String why, List<Caution> cautions) {
  Advice {
    cautions = List.copyOf(cautions);
  }

  /** Returns it in lines, the caution first. */
  List<String> lines() {
    List<String> all = new ArrayList<>(before());
    all.add(next());
    return all;
  }

  /** Returns what belongs before it. */
  List<String> before() {
    return cautions.stream().map(c -> c.signal() + ": " + c.avoid()).toList();
  }

  /** Returns the order and its reason. */
  String next() {
    return "Next: " + order + (why.isEmpty() ? "" : ".  " + why);
  }

  /** Returns it without what was acknowledged already. */
  Advice without(List<String> acknowledged) {
    return new Advice(
        order, why, cautions.stream().filter(c -> !acknowledged.contains(c.id())).toList());
  }

  /** Returns a caution as it stands between a learner's hand and the lever. */
  static String between(Caution caution) {
    return caution.signal()
        + ": "
        + caution.hazard()
        + " "
        + caution.consequence()
        + " "
        + caution.avoid()
        + " The same again gives the order.";
  }
}
