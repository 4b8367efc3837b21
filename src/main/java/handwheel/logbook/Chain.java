package handwheel.logbook;

import java.nio.charset.StandardCharsets;

/**
 * Binds each line to all lines before it. A line's {@code h} is the SHA-256 of the previous {@code
 * h}, as 64 lower-case hex digits in ASCII, followed by the line's UTF-8 bytes before {@code ,"h"}.
 *
 * <p>Who changes, adds or takes away a line changes every {@code h} after it. Who cuts the end off
 * changes none: that is what the {@code end} line is for.
 */
public final class Chain {
  /** The {@code h} before the first line: 64 zeros. */
  public static final String START = "0".repeat(64);

  private String last = START;

  /** Starts a chain at {@link #START}. */
  public Chain() {}

  private Chain(String last) {
    this.last = last;
  }

  /**
   * Goes on with a chain whose last {@code h} is known.
   *
   * @param h 64 lower-case hex digits
   * @return a chain whose next line follows on {@code h}
   */
  public static Chain after(String h) {
    return new Chain(h);
  }

  /**
   * Binds the next line.
   *
   * @param lineWithoutH a JSON object with at least one key
   * @return the same object with {@code h} as its last key
   * @throws IllegalArgumentException if the line does not end in a brace
   */
  public String append(String lineWithoutH) {
    if (!lineWithoutH.endsWith("}")) {
      throw new IllegalArgumentException("not an object: " + lineWithoutH);
    }
    String body = lineWithoutH.substring(0, lineWithoutH.length() - 1);
    last = next(last, body.getBytes(StandardCharsets.UTF_8));
    return body + HashedLine.BEFORE_H + last + HashedLine.AFTER_H;
  }

  /**
   * Returns the {@code h} of the last line.
   *
   * @return 64 lower-case hex digits; {@link #START} before the first line
   */
  public String last() {
    return last;
  }

  static String next(String previous, byte[] body) {
    return Sha256.hex(previous.getBytes(StandardCharsets.US_ASCII), body);
  }
}
