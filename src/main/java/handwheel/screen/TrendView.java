package handwheel.screen;

import handwheel.screen.Frame.Row;
import handwheel.screen.Frame.Style;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The chosen gauge over the last two minutes, the stack as it looks, and, where the screen is tall
 * enough, a plot with the drum glass beside it.
 *
 * @param state what is drawn
 * @param width columns of the screen
 */
record TrendView(State state, int width) {
  static final int TALL = 30;

  /** Rows of a screen on which a plot leaves room for what is heard. */
  static final int PLOT_FROM = 34;

  private static final int PLOT_ROWS = 6;
  private static final int LEAST_SAMPLES = 2;
  private static final double SAMPLES_A_MINUTE = 30;

  List<Row> rows() {
    List<Dial> dials = state.sighting().dials();
    if (dials.isEmpty()) {
      return List.of();
    }
    Dial dial = dials.get(Math.floorMod(state.trends().chosen(), dials.size()));
    List<Row> rows = new ArrayList<>();
    rows.add(Row.of(words(dial) + Stack.words(dials), Style.PLAIN));
    if (state.size().height() >= PLOT_FROM) {
      rows.addAll(plot(dial, new Glass(dials).rows(PLOT_ROWS)));
    }
    return rows;
  }

  private String words(Dial dial) {
    List<Double> all = state.trends().of(dial);
    String name = "Watching " + dial.name() + " (PgUp/PgDn): ";
    if (all.size() < LEAST_SAMPLES) {
      return name + "steady";
    }
    int back = Math.max(0, all.size() - 1 - (int) SAMPLES_A_MINUTE / 2);
    double minutes = (all.size() - 1 - back) / SAMPLES_A_MINUTE;
    double rate = (all.get(all.size() - 1) - all.get(back)) * dial.scale().span() / minutes;
    if (Math.abs(rate) < dial.scale().span() / 200) {
      return name + "steady";
    }
    String way = rate > 0 ? "rising " : "falling ";
    return name + way + String.format(Locale.ROOT, "%.1f a minute", Math.abs(rate));
  }

  /** The glass, then the samples, the newest at the right. */
  private List<Row> plot(Dial dial, List<String> glass) {
    List<Double> all = state.trends().of(dial);
    List<Row> rows = new ArrayList<>();
    for (int row = PLOT_ROWS - 1; row >= 0; row--) {
      StringBuilder line = new StringBuilder(glass.get(PLOT_ROWS - 1 - row));
      line.append(" ".repeat(Trends.MOST - all.size()));
      for (double share : all) {
        line.append(Math.round(share * (PLOT_ROWS - 1)) == row ? '•' : ' ');
      }
      line.append('│').append(row == PLOT_ROWS - 1 || row == 0 ? end(dial, row) : "");
      rows.add(Row.plain(line.toString()));
    }
    return rows;
  }

  private static String end(Dial dial, int row) {
    return " " + dial.scale().end(row > 0);
  }
}
