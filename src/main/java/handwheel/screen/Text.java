package handwheel.screen;

import java.util.ArrayList;
import java.util.List;

/** Text laid out in columns; whatever a terminal could take for a command becomes a mark. */
public final class Text {
  private Text() {}

  static String left(String text, int width) {
    return text.length() >= width
        ? text.substring(0, width)
        : text + " ".repeat(width - text.length());
  }

  static String right(String text, int width) {
    return text.length() >= width ? text : " ".repeat(width - text.length()) + text;
  }

  /**
   * Replaces control characters, which could be commands to a terminal, by question marks.
   *
   * @param text any text
   * @return the same text, harmless
   */
  public static String harmless(String text) {
    StringBuilder out = new StringBuilder(text.length());
    text.chars().forEach(c -> out.append(Character.isISOControl(c) ? '?' : (char) c));
    return out.toString();
  }

  /**
   * Breaks a text at blanks.
   *
   * @param text any text
   * @param width greatest width, at least 10
   * @param indent blanks before every row but the first
   * @return at least one row
   */
  static List<String> wrapped(String text, int width, int indent) {
    List<String> rows = new ArrayList<>();
    StringBuilder row = new StringBuilder();
    for (String word : text.split(" ", -1)) {
      if (row.length() > 0 && row.length() + 1 + word.length() > width) {
        rows.add(row.toString());
        row = new StringBuilder(" ".repeat(indent)).append(word);
      } else {
        row.append(row.length() == 0 ? "" : " ").append(word);
      }
    }
    rows.add(row.toString());
    return rows;
  }
}
