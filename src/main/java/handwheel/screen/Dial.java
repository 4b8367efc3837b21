package handwheel.screen;

import handwheel.screen.Frame.Span;
import handwheel.screen.Frame.Style;
import handwheel.ship.Gauge;
import handwheel.units.Measure;
import java.util.List;

/**
 * A gauge as it stands before the trainee's eyes: its name, a figure and a pointer on a plain scale
 * with painted graduations. A chalk mark shows where the pointer stood when he took the watch.
 * There are no bands and nothing lights up.
 *
 * @param id the gauge
 * @param name what people call it
 * @param figure the reading with its unit
 * @param share where the pointer stands on the scale, 0 to 1
 * @param scale what is painted on it
 */
record Dial(String id, String name, String figure, double share, Scale scale) {
  /** Cells a dial needs; below it name and figure would touch. */
  static final int LEAST_WIDTH = 39;

  private static final int NAME = 18;
  private static final int FIGURE = 11;
  private static final int LEAST_SCALE = 9;
  private static final int ENDS = 10;

  static Dial of(Gauge gauge, double shown) {
    double share = (shown - gauge.low()) / (gauge.high() - gauge.low());
    String figure = new Measure(shown, gauge.unit()).text();
    return new Dial(
        gauge.id(), gauge.name(), figure, Math.max(0, Math.min(1, share)), Scale.of(gauge));
  }

  /**
   * Draws it; the ends only where there is room.
   *
   * @param width at least {@link #LEAST_WIDTH}
   * @param chalk where the pointer stood at first, 0 to 1
   */
  List<Span> drawn(int width, double chalk) {
    boolean hasEnds = width >= NAME + FIGURE + LEAST_SCALE + ENDS + 1;
    int cells = width - NAME - FIGURE - 1 - (hasEnds ? ENDS : 0);
    return List.of(
        new Span(Text.left(name, NAME), Style.PLAIN),
        new Span(Text.right(figure, FIGURE), Style.BOLD),
        new Span(" " + pointer(cells, chalk), Style.PLAIN),
        new Span(hasEnds ? Text.left(" " + scale.ends(), ENDS) : "", Style.PLAIN));
  }

  /** Scale with its graduations, the chalk mark under the needle, the needle over all. */
  private String pointer(int cells, double chalk) {
    StringBuilder line = new StringBuilder("─".repeat(cells));
    scale.marks(cells).forEach(m -> line.setCharAt(cell(m, cells), '┴'));
    line.setCharAt(cell(chalk, cells), '╵');
    line.setCharAt(cell(share, cells), '┃');
    return line.toString();
  }

  private static int cell(double share, int cells) {
    return (int) Math.round(Math.max(0, Math.min(1, share)) * (cells - 1));
  }
}
