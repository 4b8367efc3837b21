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
    return switch (c) {
      case NonBlockingReader.READ_EXPIRED -> Optional.empty();
      case NonBlockingReader.EOF -> Optional.of(Key.of(Key.Kind.INTERRUPT));
      case '\r', '\n' -> Optional.of(Key.of(Key.Kind.ENTER));
      case 8, 127 -> Optional.of(Key.of(Key.Kind.BACK));
      case '\t' -> Optional.of(Key.of(Key.Kind.TAB));
      case 3 -> Optional.of(Key.of(Key.Kind.INTERRUPT));
      case 26 -> Optional.of(Key.of(Key.Kind.SUSPEND));
      case 27 -> Optional.of(Key.of(sequence()));
      default -> Optional.of(c < ' ' ? Key.of(Key.Kind.OTHER) : Key.letter((char) c));
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
