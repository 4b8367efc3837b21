package handwheel.debrief;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The trainee's own three lines, given before he reads anything else.
 *
 * @param saw what he saw first
 * @param thought what he thought it was
 * @param differently what he would do differently
 */
public record OwnLines(String saw, String thought, String differently) {
  /** The questions, in their order. */
  public static final List<String> QUESTIONS =
      List.of(
          "What did you see or hear first?",
          "What did you think it was?",
          "What would you do differently?");

  private static final int LONGEST = 300;

  /**
   * Takes three lines; each is cut to 300 characters.
   *
   * @param lines what was answered; lines without text are passed over
   * @return empty unless there are three
   */
  public static Optional<OwnLines> of(List<String> lines) {
    List<String> three = new ArrayList<>();
    for (String line : lines) {
      String text = line.strip();
      if (!text.isEmpty()) {
        three.add(text.substring(0, Math.min(LONGEST, text.length())));
      }
    }
    return three.size() == QUESTIONS.size()
        ? Optional.of(new OwnLines(three.get(0), three.get(1), three.get(2)))
        : Optional.empty();
  }

  /**
   * Returns the three lines.
   *
   * @return in the order of the questions
   */
  public List<String> lines() {
    return List.of(saw, thought, differently);
  }
}
