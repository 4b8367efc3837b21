package handwheel.debrief;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** What a gauge showed, drawn with letters, with the same figures as a table under it. */
final class ChartText {
  private static final int AXIS = 10;
  private static final int COLUMNS = 66;
  private static final int ROWS = 7;

  private final Block.Chart chart;
  private final long span;

  private ChartText(Block.Chart chart) {
    this.chart = chart;
    this.span = Math.max(1, chart.last() - chart.first());
  }

  static List<String> lines(Block.Chart chart) {
    return new ChartText(chart).lines();
  }

  private List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add("  " + chart.title() + ", " + chart.unit());
    for (int row = ROWS - 1; row >= 0; row--) {
      lines.add(axis(row) + "|" + dots(row));
    }
    lines.add(" ".repeat(AXIS) + "+" + "-".repeat(COLUMNS));
    lines.addAll(letters());
    lines.add("  " + summary(chart));
    return lines;
  }

  /** The same in words. */
  static String summary(Block.Chart chart) {
    StringBuilder text = new StringBuilder("At first ");
    text.append(figure(chart.points().get(0).milli())).append(", lowest ");
    text.append(figure(chart.low())).append(", highest ").append(figure(chart.high()));
    text.append(", at the end ").append(figure(chart.at(chart.last())));
    return text + " " + chart.unit() + ".";
  }

  static String figure(long milli) {
    BigDecimal exact = BigDecimal.valueOf(milli, 3);
    int digits = Math.abs(milli) < 20_000 ? 1 : 0;
    String text = exact.setScale(digits, RoundingMode.HALF_UP).toPlainString();
    return text.equals("-0.0") ? "0.0" : text;
  }

  private String axis(int row) {
    String label = "";
    if (row == ROWS - 1) {
      label = figure(chart.high());
    } else if (row == 0) {
      label = figure(chart.low());
    }
    return Wrap.right(label, AXIS - 1) + " ";
  }

  private String dots(int row) {
    char[] dots = new char[COLUMNS];
    Arrays.fill(dots, ' ');
    for (int x = 0; x < COLUMNS; x++) {
      if (rowOf(chart.at(chart.first() + span * x / (COLUMNS - 1))) == row) {
        dots[x] = '*';
      }
    }
    return new String(dots).stripTrailing();
  }

  private int rowOf(long milli) {
    long height = Math.max(1, chart.high() - chart.low());
    return (int) (((milli - chart.low()) * (ROWS - 1) + height / 2) / height);
  }

  /** Letters under the axis; those that fall on the same column stand under each other. */
  private List<String> letters() {
    List<StringBuilder> rows = new ArrayList<>();
    for (Block.Mark m : chart.marks()) {
      int x = (int) ((m.tick() - chart.first()) * (COLUMNS - 1) / span);
      if (x >= 0 && x < COLUMNS) {
        put(rows, x, m.letter());
      }
    }
    return rows.stream().map(r -> " ".repeat(AXIS + 1) + r).toList();
  }

  private static void put(List<StringBuilder> rows, int x, String letter) {
    for (StringBuilder row : rows) {
      if (row.length() <= x) {
        row.append(" ".repeat(x - row.length())).append(letter);
        return;
      }
    }
    rows.add(new StringBuilder(" ".repeat(x) + letter));
  }
}
