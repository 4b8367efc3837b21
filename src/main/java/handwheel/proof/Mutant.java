package handwheel.proof;

import handwheel.diagnostics.SourceSpot;
import java.util.List;

/**
 * The witness with one thing changed, and what that must do to the score.
 *
 * @param what what was changed, for people, such as {@code drop `everyone leave`}
 * @param expected what must come of it
 * @param acts ids of the steps or rules the change is about
 * @param spot where the changed thing stands in the script
 * @param trial how it is played
 */
record Mutant(String what, Expected expected, List<String> acts, SourceSpot spot, Trial trial) {
  Mutant {
    acts = List.copyOf(acts);
  }

  /** What must come of a change. */
  enum Expected {
    /** Points are lost on one of the acts. */
    CHARGED,
    /** Nothing is lost. */
    FREE,
    /** More points than before cannot come of it. */
    ANY
  }
}
