package handwheel.board;

import java.util.ArrayList;
import java.util.List;

/**
 * A part of a paper: one table with a title, the same as text, as HTML and as CSV.
 *
 * @param title its heading
 * @param head names of the columns
 * @param rows as many cells in each as columns
 * @param note a sentence below; may be empty
 */
public record Section(String title, List<String> head, List<List<String>> rows, String note) {
  private static final int LINE_CHARS = 78;

  /**
   * Copies the lists.
   *
   * @param title its heading
   * @param head names of the columns
   * @param rows as many cells in each as columns
   * @param note a sentence below; may be empty
   */
  public Section {
    head = List.copyOf(head);
    rows = rows.stream().map(List::copyOf).toList();
  }

  /**
   * Prints it as text that a screen reader can follow: aligned where it fits, else a line for each
   * cell.
   *
   * @return lines of at most 80 characters where words allow
   */
  public List<String> lines() {
    List<String> lines = new ArrayList<>(List.of("", title));
    if (rows.isEmpty()) {
      lines.add("  none");
    } else if (width() <= LINE_CHARS) {
      lines.add(aligned(head));
      rows.forEach(r -> lines.add(aligned(r)));
    } else {
      rows.forEach(r -> lines.addAll(listed(r)));
    }
    if (!note.isEmpty()) {
      lines.add("  " + note);
    }
    return lines;
  }

  private int width() {
    int sum = 0;
    for (int c = 0; c < head.size(); c++) {
      sum += 2 + width(c);
    }
    return sum;
  }

  private int width(int column) {
    int most = head.get(column).length();
    for (List<String> row : rows) {
      most = Math.max(most, row.get(column).length());
    }
    return most;
  }

  private String aligned(List<String> cells) {
    StringBuilder line = new StringBuilder();
    for (int c = 0; c < cells.size(); c++) {
      line.append("  ").append(cells.get(c));
      line.append(" ".repeat(width(c) - cells.get(c).length()));
    }
    return line.toString().stripTrailing();
  }

  private List<String> listed(List<String> cells) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder("  ");
    for (int c = 0; c < cells.size(); c++) {
      String part = head.get(c) + ": " + cells.get(c) + (c + 1 < cells.size() ? "; " : "");
      if (line.length() + part.length() > LINE_CHARS && line.length() > 4) {
        lines.add(line.toString().stripTrailing());
        line = new StringBuilder("    ");
      }
      line.append(part);
    }
    lines.add(line.toString().stripTrailing());
    return lines;
  }
}
