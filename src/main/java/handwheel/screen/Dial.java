package handwheel.screen;

import handwheel.ship.Gauge;
import handwheel.units.Measure;

/**
 * A gauge as it stands before the trainee's eyes.
 *
 * @param name what people call it
 * @param figure the reading with its unit
 * @param share where the pointer stands on the scale, 0 to 1
 */
record Dial(String name, String figure, double share) {
  private static final int FIGURE = 11;

  static Dial of(Gauge gauge, double shown) {
    double share = (shown - gauge.low()) / (gauge.high() - gauge.low());
    return new Dial(gauge.name(), new Measure(shown, gauge.unit()).text(), share);
  }

  /** Prints name, reading and pointer in a width of at least 30. */
  String text(int width) {
    int scale = Math.max(7, Math.min(21, width / 5));
    int room = width - FIGURE - scale - 3;
    String cut = name.length() > room ? name.substring(0, room) : name;
    return Text.left(cut, room) + Text.right(figure, FIGURE) + " " + pointer(scale);
  }

  private String pointer(int scale) {
    int at = (int) Math.round(share * (scale - 1));
    return "-".repeat(at) + "|" + "-".repeat(scale - 1 - at);
  }
}
