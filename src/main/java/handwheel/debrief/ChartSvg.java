package handwheel.debrief;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/** What a gauge showed as a drawing, and the same as a table. */
final class ChartSvg {
  private static final int WIDTH = 760;
  private static final int HEIGHT = 262;
  private static final int LEFT = 64;
  private static final int TOP = 66;
  private static final int RIGHT = 12;
  private static final int BOTTOM = 12;
  private static final int LINES = 4;
  private static final int MARK_PX = 12;
  private static final int MARK_ROWS = 4;

  private final Block.Chart chart;
  private final String id;
  private final StringBuilder out = new StringBuilder();

  private ChartSvg(Block.Chart chart, String id) {
    this.chart = chart;
    this.id = id;
  }

  static String of(Block.Chart chart, String id) {
    return new ChartSvg(chart, id).draw();
  }

  /** The figures at each event. */
  static Block.Table table(Block.Chart chart) {
    return new Block.Table(
        chart.title() + " at each event, " + chart.unit(),
        List.of("Event", "When", chart.unit(), "What happened"),
        chart.marks().stream()
            .map(
                m -> List.of(m.letter(), m.clock(), ChartText.figure(chart.at(m.tick())), m.text()))
            .toList());
  }

  private String draw() {
    out.append("<svg viewBox=\"0 0 ").append(WIDTH).append(' ').append(HEIGHT);
    out.append("\" role=\"img\" aria-labelledby=\"").append(id).append("t ").append(id);
    out.append("d\" font-family=\"system-ui, sans-serif\" font-size=\"12\" fill=\"#1a1a1a\">\n");
    String title = Html.text(chart.title() + ", " + chart.unit());
    out.append("<title id=\"").append(id).append("t\">").append(title).append("</title>\n");
    out.append("<desc id=\"").append(id).append("d\">");
    out.append(Html.text(ChartText.summary(chart) + " The table below has the figures."));
    out.append("</desc>\n");
    text(LEFT, 13, "start", chart.title() + ", " + chart.unit());
    grid();
    marks();
    String points =
        chart.points().stream()
            .map(p -> x(p.tick()) + "," + y(p.milli()))
            .collect(Collectors.joining(" "));
    out.append("<polyline fill=\"none\" stroke=\"#1a1a1a\" stroke-width=\"2\" points=\"");
    out.append(points).append("\"/>\n");
    return out.append("</svg>").toString();
  }

  private void grid() {
    for (int i = 0; i <= LINES; i++) {
      long milli = chart.low() + (chart.high() - chart.low()) * i / LINES;
      int y = y(milli);
      line(LEFT, y, WIDTH - RIGHT, y, "stroke=\"#c4c4c4\"");
      text(LEFT - 6, y + 4, "end", ChartText.figure(milli));
    }
  }

  /** A dashed line for each event; a letter that would touch another stands above it. */
  private void marks() {
    int[] lastX = new int[MARK_ROWS];
    Arrays.fill(lastX, -MARK_PX);
    for (Block.Mark m : chart.marks()) {
      int x = x(m.tick());
      int row = 0;
      while (row < MARK_ROWS - 1 && x - lastX[row] < MARK_PX) {
        row++;
      }
      lastX[row] = x;
      line(x, TOP, x, HEIGHT - BOTTOM, "stroke=\"#6b6b6b\" stroke-dasharray=\"3 3\"");
      text(x, TOP - 5 - row * MARK_PX, "middle", m.letter());
    }
  }

  private void line(int x1, int y1, int x2, int y2, String look) {
    out.append("<line x1=\"").append(x1).append("\" y1=\"").append(y1);
    out.append("\" x2=\"").append(x2).append("\" y2=\"").append(y2).append("\" ");
    out.append(look).append("/>\n");
  }

  private void text(int x, int y, String anchor, String text) {
    out.append("<text x=\"").append(x).append("\" y=\"").append(y).append("\" text-anchor=\"");
    out.append(anchor).append("\">").append(Html.text(text)).append("</text>\n");
  }

  private int x(long tick) {
    long span = Math.max(1, chart.last() - chart.first());
    return LEFT + (int) ((WIDTH - LEFT - RIGHT) * (tick - chart.first()) / span);
  }

  private int y(long milli) {
    long span = Math.max(1, chart.high() - chart.low());
    return HEIGHT - BOTTOM - (int) ((HEIGHT - TOP - BOTTOM) * (milli - chart.low()) / span);
  }
}
