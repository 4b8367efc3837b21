package handwheel.screen;

import handwheel.screen.Frame.Row;
import handwheel.screen.Frame.Style;
import java.util.ArrayList;
import java.util.List;

/** Draws a state as a frame. Pure: the same state and size give the same frame. */
final class Painting {
  private final Ground ground;

  Painting(Ground ground) {
    this.ground = ground;
  }

  Frame draw(State state, Size size) {
    State sized = state.sized(size);
    if (size.isTooSmall()) {
      return small(sized);
    }
    return state.stage() == Stage.RUNNING || state.stage() == Stage.FROZEN
        ? new Board(ground.pages().title(), sized).draw()
        : page(ground.pages().of(sized), sized);
  }

  private static Frame page(Pages.Page page, State state) {
    List<Row> rows = new ArrayList<>();
    rows.add(Row.of(head(page.head(), state), Style.REVERSE));
    rows.add(Row.plain(""));
    page.rows().stream().skip(state.top()).limit(state.size().pageRows()).forEach(rows::add);
    while (rows.size() < state.size().height() - 1) {
      rows.add(Row.plain(""));
    }
    String foot = page.hasMore(state) ? "More below: Enter, Down or Page Down." : page.foot();
    String asked = state.isAsking() ? state.notice() : foot;
    rows.add(Row.of("  " + asked, Style.BOLD));
    return fitted(rows, state.size(), 2 + asked.length());
  }

  /** The help page covers a drill that runs on: its clock stays in sight. */
  private static String head(String head, State state) {
    String clock = state.stage() == Stage.HELP ? Board.clock(state) + " " : "";
    return Text.left(head, Math.max(0, state.size().width() - clock.length())) + clock;
  }

  private static Frame small(State state) {
    List<Row> rows = new ArrayList<>();
    int width = state.size().width();
    rows.add(Row.of(state.stage() == Stage.STOPPED ? "DRILL STOPPED" : "DRILL", Style.REVERSE));
    for (String line : Paper.tooSmall(state.size(), state.isRunning())) {
      Text.wrapped(line, Math.max(10, width), 0).forEach(part -> rows.add(Row.plain(part)));
    }
    return fitted(rows, state.size(), 0);
  }

  static Frame fitted(List<Row> rows, Size size, int cursor) {
    List<Row> fitted = new ArrayList<>();
    for (int i = 0; i < size.height(); i++) {
      Row row = i < rows.size() ? rows.get(i) : Row.plain("");
      fitted.add(row.fitted(size.width()));
    }
    return new Frame(fitted, Math.max(0, Math.min(size.width() - 1, cursor)));
  }
}
