package handwheel.screen;

import java.util.ArrayList;
import java.util.List;

/**
 * Text laid out in columns. {@link #harmless} is the one place where text from files and people
 * loses whatever a terminal could take for a command.
 */
public final class Text {
  private static final char MARK = '?';

  private Text() {}

  /**
   * Makes a text safe to send to a terminal: blanks for tabs and ends of line, question marks for
   * every other control character and for those that are not seen or turn the direction of writing.
   *
   * @param text any text
   * @return the same text, harmless
   */
  public static String harmless(String text) {
    StringBuilder out = new StringBuilder(text.length());
    text.chars().forEach(c -> out.append(harmless((char) c)));
    return out.toString();
  }

  private static char harmless(char c) {
    if (c == '\t' || c == '\n' || c == '\r') {
      return ' ';
    }
    boolean isCommand = Character.isISOControl(c) || c == '\u2028' || c == '\u2029';
    return isCommand || Character.getType(c) == Character.FORMAT ? MARK : c;
  }

  /**
   * Returns a harmless text in which every character takes one cell: letters of Europe, common
   * punctuation and lines; a question mark for each other character, since terminals do not agree
   * on their widths.
   *
   * @param text any text
   * @return text whose length is its width
   */
  static String oneCell(String text) {
    StringBuilder out = new StringBuilder(text.length());
    text.codePoints().forEach(c -> out.append(isOneCell(c) ? harmless((char) c) : MARK));
    return out.toString();
  }

  private static boolean isOneCell(int c) {
    boolean isLatin = c >= 0xA0 && c < 0x250;
    boolean isGreekOrCyrillic = (c >= 0x370 && c < 0x483) || (c >= 0x48A && c < 0x530);
    boolean isSign = (c >= 0x2010 && c <= 0x2027) || (c >= 0x2500 && c <= 0x257F);
    return c < 0x7F || isLatin || isGreekOrCyrillic || isSign;
  }

  static String left(String text, int width) {
    return text.length() >= width
        ? text.substring(0, width)
        : text + " ".repeat(width - text.length());
  }

  static String right(String text, int width) {
    return text.length() >= width ? text : " ".repeat(width - text.length()) + text;
  }

  /**
   * Breaks a text at blanks; a word longer than a row is cut.
   *
   * @param text any text
   * @param width greatest width, at least 10
   * @param indent blanks before every row but the first, at most 6
   * @return at least one row, none wider than {@code width}
   */
  static List<String> wrapped(String text, int width, int indent) {
    List<String> rows = new ArrayList<>();
    StringBuilder row = new StringBuilder();
    for (String word : text.split(" ", -1)) {
      String rest = word;
      boolean isFirst = row.length() == 0;
      if (!isFirst && row.length() + 1 + rest.length() > width) {
        rows.add(row.toString());
        row = new StringBuilder(" ".repeat(indent));
        isFirst = true;
      }
      row.append(isFirst ? "" : " ").append(rest);
      while (row.length() > width) {
        rows.add(row.substring(0, width));
        rest = row.substring(width);
        row = new StringBuilder(" ".repeat(indent)).append(rest);
      }
    }
    rows.add(row.toString());
    return rows;
  }
}
