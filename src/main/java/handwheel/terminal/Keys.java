package handwheel.terminal;

import handwheel.screen.Key;
import java.io.IOException;
import java.util.Optional;
import org.jline.utils.NonBlockingReader;

/**
 * Reads keys with a time limit. A read without one would hang the program when the terminal is
 * closed under it.
 */
final class Keys {
  /** The rest of an escape sequence may take this long. */
  private static final long SEQUENCE_MS = 50;

  private final NonBlockingReader in;
  private boolean isLost;

  Keys(NonBlockingReader in) {
    this.in = in;
  }

  /**
   * Waits for a key.
   *
   * @param ms how long at most
   * @return the key, or empty if none came
   */
  Optional<Key> next(long ms) throws IOException {
    int c = in.read(Math.max(1, ms));
    if (c == NonBlockingReader.EOF) {
      isLost = true;
    }
    return c < 0 ? Optional.empty() : Optional.of(key(c));
  }

  /** Returns whether the terminal is gone and no key will ever come. */
  boolean isLost() {
    return isLost;
  }

  /** Throws away what was typed so far. */
  void discard() throws IOException {
    while (next(1).isPresent()) {
      // A key that was pressed before the page stood there says nothing about the page.
    }
  }

  private Key key(int c) throws IOException {
    return switch (c) {
      case '\r', '\n' -> Key.of(Key.Kind.ENTER);
      case 8, 127 -> Key.of(Key.Kind.BACK);
      case '\t' -> Key.of(Key.Kind.TAB);
      case 3 -> Key.of(Key.Kind.INTERRUPT);
      case 12 -> Key.of(Key.Kind.REDRAW);
      case 21 -> Key.of(Key.Kind.ESCAPE);
      case 23 -> Key.of(Key.Kind.WORD_BACK);
      case 26 -> Key.of(Key.Kind.SUSPEND);
      case 27 -> Key.of(sequence());
      default -> c >= ' ' && c < 127 ? Key.letter((char) c) : Key.of(Key.Kind.OTHER);
    };
  }

  private Key.Kind sequence() throws IOException {
    int open = in.read(SEQUENCE_MS);
    if (open != '[' && open != 'O') {
      return open < 0 ? Key.Kind.ESCAPE : Key.Kind.OTHER;
    }
    int first = in.read(SEQUENCE_MS);
    int last = first;
    while (last >= '0' && last <= '?') {
      last = in.read(SEQUENCE_MS);
    }
    return switch (last) {
      case 'A' -> Key.Kind.UP;
      case 'B' -> Key.Kind.DOWN;
      case '~' ->
          first == '5' ? Key.Kind.PAGE_UP : first == '6' ? Key.Kind.PAGE_DOWN : Key.Kind.OTHER;
      default -> Key.Kind.OTHER;
    };
  }
}
