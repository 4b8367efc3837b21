package handwheel.debrief;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/** A table as text: columns as wide as they need, the widest wrapped until all fit. */
final class TableText {
  private static final int INDENT = 2;
  private static final int GAP = 2;

  private TableText() {}

  static List<String> lines(Block.Table table, int width) {
    int[] widths = widths(table, width - INDENT);
    List<String> lines = new ArrayList<>(row(table.head(), widths));
    int whole = GAP * (widths.length - 1);
    for (int w : widths) {
      whole += w;
    }
    lines.add(" ".repeat(INDENT) + "-".repeat(whole));
    table.rows().forEach(r -> lines.addAll(row(r, widths)));
    return lines;
  }

  private static int[] widths(Block.Table table, int room) {
    int[] widths = new int[table.head().size()];
    List<String> heads = new ArrayList<>();
    table.rows().forEach(r -> widen(widths, r));
    table.head().forEach(h -> heads.add(longestWord(h)));
    widen(widths, heads);
    while (sum(widths) + GAP * (widths.length - 1) > room) {
      widths[widest(widths)]--;
    }
    return widths;
  }

  private static void widen(int[] widths, List<String> row) {
    for (int i = 0; i < widths.length; i++) {
      widths[i] = Math.max(widths[i], row.get(i).length());
    }
  }

  private static String longestWord(String head) {
    return Arrays.stream(head.split(" ", -1))
        .max(Comparator.comparingInt(String::length))
        .orElse("");
  }

  private static int sum(int[] widths) {
    int sum = 0;
    for (int w : widths) {
      sum += w;
    }
    return sum;
  }

  private static int widest(int[] widths) {
    int widest = 0;
    for (int i = 1; i < widths.length; i++) {
      widest = widths[i] > widths[widest] ? i : widest;
    }
    return widest;
  }

  private static List<String> row(List<String> cells, int[] widths) {
    List<List<String>> wrapped = new ArrayList<>();
    int height = 1;
    for (int i = 0; i < widths.length; i++) {
      wrapped.add(Wrap.rows(cells.get(i), widths[i]));
      height = Math.max(height, wrapped.get(i).size());
    }
    List<String> lines = new ArrayList<>();
    for (int y = 0; y < height; y++) {
      StringBuilder line = new StringBuilder(" ".repeat(INDENT));
      for (int x = 0; x < widths.length; x++) {
        String cell = y < wrapped.get(x).size() ? wrapped.get(x).get(y) : "";
        line.append(
            isFigure(cells.get(x)) ? Wrap.right(cell, widths[x]) : Wrap.left(cell, widths[x]));
        line.append(" ".repeat(GAP));
      }
      lines.add(line.toString().stripTrailing());
    }
    return lines;
  }

  /** Figures stand under each other by their last digit. */
  static boolean isFigure(String cell) {
    return cell.matches("[-+]?\\d+(\\.\\d+)?(:\\d\\d)?( (kg|F|in|s|psig|K|%))?|-");
  }
}
