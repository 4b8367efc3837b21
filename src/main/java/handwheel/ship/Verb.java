package handwheel.ship;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What can be done to a fitting. */
public enum Verb {
  /** Opens a valve fully. */
  OPEN,
  /** Shuts a valve fully. */
  SHUT,
  /** Pulls a trip. */
  TRIP,
  /** Puts a trip back. */
  RESET,
  /** Brings a valve, a setting or a gauge to a stated value. */
  SET,
  /** Starts a machine. */
  START,
  /** Stops a machine. */
  STOP,
  /** Lights a burner by torch. */
  LIGHT,
  /** Shuts off a burner. */
  SECURE;

  /**
   * Returns the word of an order.
   *
   * @return lower-case word
   */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /**
   * Returns whether this is a controlling act: done first, repeated back after.
   *
   * @return true for trips and securing a burner
   */
  public boolean isControlling() {
    return this == TRIP || this == SECURE;
  }

  /**
   * Finds a verb by its word.
   *
   * @param word as written
   * @return the verb, or empty
   */
  public static Optional<Verb> ofWord(String word) {
    return Arrays.stream(values()).filter(v -> v.word().equals(word)).findFirst();
  }
}
