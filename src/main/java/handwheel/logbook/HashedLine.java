package handwheel.logbook;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * A line taken apart, its {@code h} not yet held against anything.
 *
 * @param text the whole line
 * @param h the {@code h} it states
 */
record HashedLine(String text, String h) {
  static final String BEFORE_H = ",\"h\":\"";
  static final String AFTER_H = "\"}";

  private static final int H_DIGITS = 64;
  private static final int TAIL = BEFORE_H.length() + H_DIGITS + AFTER_H.length();

  static LineRead<HashedLine> of(byte[] line) {
    String text = new String(line, StandardCharsets.UTF_8);
    byte[] again = text.getBytes(StandardCharsets.UTF_8);
    if (!Arrays.equals(line, again)) {
      return LineRead.trouble(columnOfBadByte(line, again), "this is not UTF-8.");
    }
    if (!endsInH(text)) {
      return LineRead.trouble(
          Math.max(1, text.length() - TAIL + 1),
          "the line does not end in `,\"h\":\"`, 64 digits of 0-9 and a-f, `\"}`.");
    }
    int h = text.length() - AFTER_H.length() - H_DIGITS;
    return LineRead.of(new HashedLine(text, text.substring(h, h + H_DIGITS)));
  }

  /** Returns the line without {@code h}. */
  String bare() {
    return body() + "}";
  }

  boolean followsOn(String previous) {
    return h.equals(Chain.next(previous, body().getBytes(StandardCharsets.UTF_8)));
  }

  private String body() {
    return text.substring(0, text.length() - TAIL);
  }

  private static boolean endsInH(String text) {
    int h = text.length() - AFTER_H.length() - H_DIGITS;
    return h > BEFORE_H.length()
        && text.startsWith(BEFORE_H, h - BEFORE_H.length())
        && text.endsWith(AFTER_H)
        && text.substring(h, h + H_DIGITS).chars().allMatch(HashedLine::isHexDigit);
  }

  private static boolean isHexDigit(int c) {
    return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'f');
  }

  private static int columnOfBadByte(byte[] line, byte[] again) {
    int same = Math.max(0, Arrays.mismatch(line, again));
    return new String(line, 0, same, StandardCharsets.UTF_8).length() + 1;
  }
}
