package handwheel.screen;

import handwheel.screen.Frame.Span;
import handwheel.screen.Frame.Style;
import handwheel.ship.Gauge;
import handwheel.units.Measure;
import java.math.BigDecimal;
import java.util.List;

/**
 * A gauge as it stands before the trainee's eyes: its name, a figure and a pointer on a plain
 * scale. There are no bands and nothing lights up.
 *
 * @param id the gauge
 * @param name what people call it
 * @param figure the reading with its unit
 * @param share where the pointer stands on the scale, 0 to 1
 * @param ends the ends of the scale, such as {@code 0..800}
 */
record Dial(String id, String name, String figure, double share, String ends) {
  /** Cells a dial needs; below it name and figure would touch. */
  static final int LEAST_WIDTH = 39;

  private static final int NAME = 18;
  private static final int FIGURE = 11;
  private static final int LEAST_SCALE = 9;
  private static final int ENDS = 10;

  static Dial of(Gauge gauge, double shown) {
    double share = (shown - gauge.low()) / (gauge.high() - gauge.low());
    String figure = new Measure(shown, gauge.unit()).text();
    String ends = plain(gauge.low()) + ".." + plain(gauge.high());
    return new Dial(gauge.id(), gauge.name(), figure, Math.max(0, Math.min(1, share)), ends);
  }

  private static String plain(double figure) {
    return BigDecimal.valueOf(figure).stripTrailingZeros().toPlainString();
  }

  /** Draws it in a width of at least {@link #LEAST_WIDTH}; the ends only where there is room. */
  List<Span> drawn(int width) {
    boolean hasEnds = width >= NAME + FIGURE + LEAST_SCALE + ENDS + 1;
    int scale = width - NAME - FIGURE - 1 - (hasEnds ? ENDS : 0);
    return List.of(
        new Span(Text.left(name, NAME), Style.PLAIN),
        new Span(Text.right(figure, FIGURE), Style.BOLD),
        new Span(" " + pointer(scale), Style.PLAIN),
        new Span(hasEnds ? Text.left(" " + ends, ENDS) : "", Style.PLAIN));
  }

  private String pointer(int cells) {
    int at = (int) Math.round(share * (cells - 1));
    return "─".repeat(at) + "│" + "─".repeat(cells - 1 - at);
  }
}
