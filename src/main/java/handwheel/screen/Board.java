package handwheel.screen;

import handwheel.debrief.Sentences;
import handwheel.screen.Frame.Row;
import handwheel.screen.Frame.Span;
import handwheel.screen.Frame.Style;
import java.util.ArrayList;
import java.util.List;

/**
 * The drill as it runs: what is read at the top, what is said at the bottom, the order line last.
 * The parts keep their places while the trainee stands at one spot, so that eyes find them again.
 *
 * @param title what the frame begins with
 * @param state what is drawn; its size is the screen's
 */
record Board(String title, State state) {
  private static final int GAP = 2;
  private static final int MOST_COLUMNS = 3;

  Frame draw() {
    Foot foot = new Foot(state.line(), state.notice(), width());
    List<Row> rows = new ArrayList<>();
    rows.add(Row.of(header(), Style.REVERSE));
    rows.add(Row.of(state.sighting().air(), Style.BOLD));
    rows.addAll(dials());
    rows.add(rule("seen here"));
    rows.addAll(new People(state.sighting().people(), width()).rows());
    rows.add(rule("heard and said"));
    rows.addAll(log(Math.max(0, state.size().height() - rows.size() - foot.rows().size())));
    rows.addAll(foot.rows());
    return Painting.fitted(rows, state.size(), foot.cursor());
  }

  private int width() {
    return state.size().width();
  }

  static String clock(State state) {
    return Sentences.clock(state.now());
  }

  private String header() {
    String be = state.sighting().isWalking() ? "leaving " : "at ";
    String right = be + state.sighting().place() + "   " + clock(state) + " ";
    return Text.left(title, Math.max(0, width() - right.length())) + right;
  }

  private Row rule(String what) {
    String head = "── " + what + " ";
    return Row.plain(head + "─".repeat(Math.max(0, width() - head.length())));
  }

  /** Sets the dials down the first column and then down the next. */
  private List<Row> dials() {
    List<Dial> dials = state.sighting().dials();
    if (dials.isEmpty()) {
      return List.of(Row.plain("No gauge can be read from here."));
    }
    int columns = Math.max(2, Math.min(MOST_COLUMNS, width() / (Dial.LEAST_WIDTH + 20)));
    int cell = (width() - (columns - 1) * GAP) / columns;
    int rows = (dials.size() + columns - 1) / columns;
    List<Row> out = new ArrayList<>();
    for (int i = 0; i < rows; i++) {
      List<Span> spans = new ArrayList<>();
      for (int at = i; at < dials.size(); at += rows) {
        spans.addAll(dials.get(at).drawn(cell));
        spans.add(new Span(" ".repeat(GAP), Style.PLAIN));
      }
      out.add(new Row(spans));
    }
    return out;
  }

  /** The newest line stands lowest, next to the order line. */
  private List<Row> log(int room) {
    List<String> lines = state.hearing().lines();
    List<Row> rows = new ArrayList<>();
    for (String line : lines.subList(Math.max(0, lines.size() - room), lines.size())) {
      Text.wrapped(line, width(), 5).forEach(part -> rows.add(Row.plain(part)));
    }
    List<Row> out = new ArrayList<>();
    for (int i = rows.size(); i < room; i++) {
      out.add(Row.plain(""));
    }
    out.addAll(rows.subList(Math.max(0, rows.size() - room), rows.size()));
    return out;
  }
}
