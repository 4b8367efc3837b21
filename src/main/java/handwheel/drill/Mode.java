package handwheel.drill;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** How a drill is run. The plant and the watch behave alike in all of them. */
public enum Mode {
  /** The next step and its reason are offered. */
  LEARN,
  /** Hints on request, freeze allowed. */
  PRACTICE,
  /** Nothing but a drill stop. */
  SCORED,
  /** As scored, inside an ordinary watch, and nobody is told what will happen, if anything. */
  SEALED;

  /**
   * Returns whether the run counts before a board.
   *
   * @return true where nothing is offered
   */
  public boolean isScored() {
    return this == SCORED || this == SEALED;
  }

  /**
   * Returns the word of a command line and a record.
   *
   * @return lower-case word
   */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /**
   * Finds a mode by its word.
   *
   * @param word as written
   * @return the mode, or empty
   */
  public static Optional<Mode> ofWord(String word) {
    return Arrays.stream(values()).filter(m -> m.word().equals(word)).findFirst();
  }
}
