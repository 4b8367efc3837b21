package handwheel.debrief;

import java.util.List;

/**
 * What a debrief comes to.
 *
 * @param at when it turned, from the first cue, such as {@code 0:20}
 * @param turned the moment it turned
 * @param next what to do next time, as an order to oneself with its cue
 * @param right what was right
 * @param behaviours what to change, at most three
 */
public record Lesson(String at, String turned, String next, String right, List<String> behaviours) {
  /**
   * Copies the list.
   *
   * @param at when it turned, from the first cue, such as {@code 0:20}
   * @param turned the moment it turned
   * @param next what to do next time, as an order to oneself with its cue
   * @param right what was right
   * @param behaviours what to change, at most three
   */
  public Lesson {
    behaviours = List.copyOf(behaviours);
  }
}
