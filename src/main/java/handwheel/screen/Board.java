package handwheel.screen;

import handwheel.debrief.Sentences;
import handwheel.screen.Frame.Row;
import handwheel.screen.Frame.Span;
import handwheel.screen.Frame.Style;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The drill as it runs: what is read at the top, what is said at the bottom, the order line last.
 * The parts keep their places while the trainee stands at one spot, so that eyes find them again.
 *
 * @param title what the frame begins with
 * @param state what is drawn; its size is the screen's
 */
record Board(String title, State state) {
  private static final int GAP = 2;
  private static final int MOST_ADVICE = 4;
  private static final int MOST_COLUMNS = 3;

  Frame draw() {
    Foot foot = new Foot(state.line(), state.notice(), state.aid().isFree(), width());
    List<Row> advice = advice();
    List<Row> rows = new ArrayList<>();
    rows.add(Row.of(header(), Style.REVERSE));
    rows.add(Row.of(state.sighting().air(), Style.BOLD));
    rows.addAll(dials());
    rows.addAll(new TrendView(state, width()).rows());
    rows.add(rule("seen here"));
    rows.addAll(people(!advice.isEmpty()));
    rows.add(rule("heard and said"));
    int room = Math.max(0, state.size().height() - foot.rows().size());
    rows.addAll(log(Math.max(0, room - rows.size() - advice.size())));
    rows.addAll(advice);
    // Whatever stands above, the order line and what it says are never cut.
    List<Row> all = new ArrayList<>(rows.subList(0, Math.min(room, rows.size())));
    all.addAll(foot.rows());
    return Painting.fitted(all, state.size(), foot.cursor());
  }

  /** Where advice takes rows on a small screen, who stands by gives one up. */
  private List<Row> people(boolean isCrowded) {
    List<Row> rows = new People(state.sighting().people(), width()).rows();
    boolean isSmall = state.size().height() < TrendView.TALL;
    return isCrowded && isSmall ? rows.subList(0, Math.max(1, rows.size() - 1)) : rows;
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

  /** What to say next, above the line it is said on; nothing in a run that counts. */
  private List<Row> advice() {
    boolean isBetween = !state.line().caution().isEmpty();
    Optional<Advice> shown = isBetween ? Optional.empty() : state.aid().shown();
    List<Row> next = shown.map(a -> bold(List.of(a.next()))).orElse(List.of());
    List<Row> before = shown.map(a -> bold(a.before())).orElse(List.of());
    int room = Math.max(0, MOST_ADVICE - next.size());
    List<Row> rows = new ArrayList<>(before.subList(0, Math.min(room, before.size())));
    rows.addAll(next);
    return rows;
  }

  private List<Row> bold(List<String> lines) {
    return lines.stream()
        .flatMap(l -> Text.wrapped(l, width(), 2).stream())
        .map(r -> Row.of(r, Style.BOLD))
        .toList();
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
        spans.addAll(dials.get(at).drawn(cell, state.trends().chalk(dials.get(at))));
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
