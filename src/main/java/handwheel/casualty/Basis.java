package handwheel.casualty;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** On what ground points are charged. */
public enum Basis {
  /** A rule of the trade. */
  TRADE_RULE,
  /** A figure of this ship. */
  SHIP_FIGURE,
  /** A figure of the model alone; never critical. */
  MODEL_ONLY;

  /**
   * Returns the word in a script.
   *
   * @return lower-kebab word
   */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /**
   * Finds a basis by its word.
   *
   * @param word as written
   * @return the basis, or empty
   */
  public static Optional<Basis> ofWord(String word) {
    return Arrays.stream(values()).filter(v -> v.word().equals(word)).findFirst();
  }
}
