package handwheel.ship;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** How a control is worked. */
public enum ControlKind {
  /** Wheel on the stem; the time grows with the travel. */
  HANDWHEEL,
  /** Wheel on a rod from elsewhere; the time grows with the travel. */
  REACH_ROD,
  /** Lever or handle; the time grows with the travel. */
  LEVER,
  /** One pull; the time is the same whatever the travel. */
  TRIP,
  /** Push button or switch; the time is the same whatever the travel. */
  BUTTON;

  /**
   * Returns the word in a ship file.
   *
   * @return lower-kebab word
   */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /**
   * Returns whether the time to work it grows with the travel.
   *
   * @return true for wheels, rods and levers
   */
  public boolean isTravelled() {
    return this != TRIP && this != BUTTON;
  }

  /**
   * Finds a kind by its word.
   *
   * @param word as written
   * @return the kind, or empty
   */
  public static Optional<ControlKind> ofWord(String word) {
    return Arrays.stream(values()).filter(v -> v.word().equals(word)).findFirst();
  }
}
