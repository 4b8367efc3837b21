package handwheel.diagnostics;

import java.util.List;

/** The line of a file that a finding speaks of, with a marker below the word that is meant. */
public final class Excerpt {
  /** What is shown of a line, so that number and line fit a terminal of 80 columns. */
  private static final int WIDTH = 66;

  /** How much of a long line is kept before the word that is meant. */
  private static final int BEFORE = 24;

  private static final int FIRST_PRINTABLE = 0x20;
  private static final String CUT = "..";

  private Excerpt() {}

  /**
   * Returns two lines to be printed below a finding.
   *
   * @param lines the lines of the file
   * @param spot where the finding is
   * @return number and text of the line, and the marker; empty if the place names no line of these
   */
  public static List<String> of(List<String> lines, SourceSpot spot) {
    if (spot.line() < 1 || spot.line() > lines.size() || spot.column() < 1) {
      return List.of();
    }
    int[] points = lines.get(spot.line() - 1).codePoints().map(Excerpt::shown).toArray();
    int at = Math.min(spot.column() - 1, points.length);
    boolean isLong = points.length > WIDTH;
    int from = isLong ? Math.max(0, Math.min(at - BEFORE, points.length - WIDTH)) : 0;
    int to = Math.min(points.length, from + WIDTH);
    String head = from > 0 ? CUT : "";
    String text = head + new String(points, from, to - from) + (to < points.length ? CUT : "");
    String mark = " ".repeat(head.length() + at - from) + "^".repeat(wordLength(points, at, to));
    String number = Integer.toString(spot.line());
    return List.of(
        "    " + number + " | " + text, "    " + " ".repeat(number.length()) + " | " + mark);
  }

  private static int shown(int point) {
    return point < FIRST_PRINTABLE ? ' ' : point;
  }

  /** Letters, figures, hyphens and points from the place on; one character of anything else. */
  private static int wordLength(int[] points, int at, int to) {
    int end = at;
    while (end < to && (Character.isLetterOrDigit(points[end]) || "-.".indexOf(points[end]) >= 0)) {
      end++;
    }
    return Math.max(1, end - at);
  }
}
