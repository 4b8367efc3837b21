package handwheel.scoring;

import java.util.ArrayList;
import java.util.List;

/** Lines of text no wider than a small terminal. */
final class Columns {
  static final int WIDTH = 80;

  private final List<String> lines = new ArrayList<>();

  List<String> lines() {
    return List.copyOf(lines);
  }

  void blank() {
    lines.add("");
  }

  /**
   * Adds a text, wrapped between words. A word that is wider than the line is cut.
   *
   * @param first what stands before the first line
   * @param indent how far the lines after it are moved in
   */
  void add(String first, int indent, String text) {
    StringBuilder line = new StringBuilder(first);
    boolean isFresh = true;
    for (String word : text.strip().split(" +", -1)) {
      if (!isFresh && line.length() + 1 + word.length() > WIDTH) {
        lines.add(line.toString().stripTrailing());
        line.setLength(0);
        line.append(" ".repeat(indent));
        isFresh = true;
      }
      line.append(isFresh ? "" : " ").append(word);
      cut(line, indent);
      isFresh = false;
    }
    lines.add(line.toString().stripTrailing());
  }

  private void cut(StringBuilder line, int indent) {
    while (line.length() > WIDTH) {
      lines.add(line.substring(0, WIDTH));
      line.replace(0, WIDTH, " ".repeat(indent));
    }
  }
}
