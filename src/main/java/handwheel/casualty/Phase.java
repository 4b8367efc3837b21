package handwheel.casualty;

import java.util.List;
import java.util.Optional;

/**
 * A state of the casualty.
 *
 * @param id lower-kebab id
 * @param acts what happens on entering it, in order
 * @param next the ways out of it, first match wins
 * @param isEnd whether the drill ends here
 */
public record Phase(String id, List<PhaseAct> acts, List<Transition> next, boolean isEnd) {
  /**
   * Copies the lists.
   *
   * @param id lower-kebab id
   * @param acts what happens on entering it, in order
   * @param next the ways out of it, first match wins
   * @param isEnd whether the drill ends here
   */
  public Phase {
    acts = List.copyOf(acts);
    next = List.copyOf(next);
  }

  /**
   * A way out of a phase.
   *
   * @param to id of the next phase
   * @param afterS taken this long after entering, s
   * @param when taken when this holds
   */
  public record Transition(String to, Optional<Amount> afterS, Optional<When> when) {}
}
