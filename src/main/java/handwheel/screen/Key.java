package handwheel.screen;

/**
 * A key.
 *
 * @param kind what key
 * @param letter the character of a {@link Kind#LETTER}; otherwise 0
 */
public record Key(Kind kind, char letter) {
  /** Kinds of keys. */
  public enum Kind {
    /** A printable character. */
    LETTER,
    /** Enter. */
    ENTER,
    /** Backspace. */
    BACK,
    /** Tab. */
    TAB,
    /** Escape. */
    ESCAPE,
    /** Up. */
    UP,
    /** Down. */
    DOWN,
    /** A page up. */
    PAGE_UP,
    /** A page down. */
    PAGE_DOWN,
    /** Control and C. */
    INTERRUPT,
    /** Control and Z. */
    SUSPEND,
    /** Anything else. */
    OTHER
  }

  /**
   * Makes a key that is no character.
   *
   * @param kind what key
   * @return the key
   */
  public static Key of(Kind kind) {
    return new Key(kind, (char) 0);
  }

  /**
   * Makes a character.
   *
   * @param letter printable character
   * @return the key
   */
  public static Key letter(char letter) {
    return new Key(Kind.LETTER, letter);
  }
}
