package handwheel.debrief;

import java.util.ArrayList;
import java.util.List;

/** Breaks text between words; a word wider than the row is cut. */
final class Wrap {
  private Wrap() {}

  static List<String> rows(String text, int width) {
    List<String> rows = new ArrayList<>();
    StringBuilder row = new StringBuilder();
    for (String word : text.strip().split("\\s+", -1)) {
      if (row.length() > 0 && row.length() + 1 + word.length() > width) {
        rows.add(row.toString());
        row.setLength(0);
      }
      row.append(row.length() > 0 ? " " : "").append(word);
      while (row.length() > width) {
        rows.add(row.substring(0, width));
        row.delete(0, width);
      }
    }
    rows.add(row.toString());
    return rows;
  }

  static String left(String text, int width) {
    return text + " ".repeat(Math.max(0, width - text.length()));
  }

  static String right(String text, int width) {
    return " ".repeat(Math.max(0, width - text.length())) + text;
  }
}
