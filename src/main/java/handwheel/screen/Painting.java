package handwheel.screen;

import handwheel.casualty.Casualty;
import handwheel.screen.Frame.Row;
import handwheel.screen.Frame.Style;
import java.util.ArrayList;
import java.util.List;

/** Draws a state as a frame. Pure: the same state, look, log and size give the same frame. */
final class Painting {
  /** Smallest screen. */
  static final int LEAST_WIDTH = 80;

  /** Smallest screen. */
  static final int LEAST_HEIGHT = 24;

  private static final String PROMPT = "> ";

  private final Casualty casualty;
  private final String mode;
  private final Expander expander;

  Painting(Casualty casualty, String mode, Expander expander) {
    this.casualty = casualty;
    this.mode = mode;
    this.expander = expander;
  }

  Frame draw(State state, Look look, List<String> log, Size size) {
    if (size.width() < LEAST_WIDTH || size.height() < LEAST_HEIGHT) {
      return page(size, "DRILL", tooSmall(size));
    }
    String head = "DRILL  " + casualty.title() + "  " + mode;
    return switch (state.stage()) {
      case CAUTION -> page(size, head, Paper.caution(casualty, state.page()));
      case BRIEF -> page(size, head, Paper.brief(casualty, mode));
      case HELP -> page(size, head + "  (the drill runs on)", Paper.help(expander));
      case STOPPED -> page(size, "DRILL STOPPED", stopped());
      case OVER -> over(state, size);
      case RUNNING -> running(state, look, log, size);
    };
  }

  /**
   * A size in characters.
   *
   * @param width columns
   * @param height rows
   */
  record Size(int width, int height) {}

  private static List<String> tooSmall(Size size) {
    return List.of(
        "This window is " + size.width() + " by " + size.height() + ".",
        "80 by 24 is needed. Make it larger, or start again with --lines.");
  }

  private static List<String> stopped() {
    return List.of(
        "The drill stands still.",
        "",
        "Enter: go on.",
        "!    : this is a real casualty. Leave this terminal now.");
  }

  private static Frame page(Size size, String head, List<String> text) {
    List<Row> rows = new ArrayList<>();
    rows.add(new Row(Text.left(head, size.width()), Style.REVERSE));
    rows.add(new Row("", Style.PLAIN));
    for (String line : text) {
      Style style = isSignal(line) ? Style.BOLD : Style.PLAIN;
      Text.wrapped(line, Math.max(10, size.width() - 4), 0)
          .forEach(row -> rows.add(new Row("  " + row, style)));
    }
    return fitted(rows, size, 0);
  }

  private static boolean isSignal(String line) {
    return line.equals("DANGER") || line.equals("WARNING") || line.equals("CAUTION");
  }

  private static Frame over(State state, Size size) {
    List<Row> rows = new ArrayList<>();
    rows.add(new Row(Text.left("DRILL OVER", size.width()), Style.REVERSE));
    state.sheet().stream()
        .skip(state.page())
        .limit(size.height() - 2)
        .forEach(line -> rows.add(new Row(line, Style.PLAIN)));
    while (rows.size() < size.height() - 1) {
      rows.add(new Row("", Style.PLAIN));
    }
    rows.add(new Row("Up, Down, Page Up, Page Down: read. Enter: leave.", Style.BOLD));
    return fitted(rows, size, 0);
  }

  private Frame running(State state, Look look, List<String> log, Size size) {
    int width = size.width();
    List<Row> rows = new ArrayList<>();
    rows.add(new Row(header(look, width), Style.REVERSE));
    rows.add(new Row(look.air(), Style.BOLD));
    dials(look, width).forEach(r -> rows.add(new Row(r, Style.PLAIN)));
    rows.add(new Row("-".repeat(width), Style.PLAIN));
    columns(look.people(), width).forEach(r -> rows.add(new Row(r, Style.PLAIN)));
    List<Row> foot = foot(state, width);
    int room = size.height() - rows.size() - foot.size() - 1;
    rows.add(new Row("-".repeat(width), Style.PLAIN));
    tail(log, width, Math.max(0, room)).forEach(r -> rows.add(new Row(r, Style.PLAIN)));
    rows.addAll(foot);
    return fitted(rows, size, Math.min(width - 1, PROMPT.length() + state.typed().length()));
  }

  private String header(Look look, int width) {
    String head = "DRILL  " + casualty.title() + "  " + mode;
    String tail = look.place() + "   " + look.clock() + " ";
    int gap = Math.max(1, width - head.length() - tail.length());
    return Text.left(head + " ".repeat(gap) + tail, width);
  }

  private static List<String> dials(Look look, int width) {
    int half = (width - 2) / 2;
    return columns(look.dials().stream().map(d -> d.text(half)).toList(), width);
  }

  /** Sets texts in two columns, down the first and then down the second. */
  private static List<String> columns(List<String> texts, int width) {
    int half = (width - 2) / 2;
    int rows = (texts.size() + 1) / 2;
    List<String> out = new ArrayList<>();
    for (int i = 0; i < rows; i++) {
      String second = i + rows < texts.size() ? texts.get(i + rows) : "";
      out.add(Text.left(texts.get(i), half) + "  " + Text.left(second, half));
    }
    return out;
  }

  private static List<String> tail(List<String> log, int width, int room) {
    List<String> rows = new ArrayList<>();
    for (String line : log.subList(Math.max(0, log.size() - room), log.size())) {
      rows.addAll(Text.wrapped(line, width, 6));
    }
    List<String> last = new ArrayList<>(rows.subList(Math.max(0, rows.size() - room), rows.size()));
    while (last.size() < room) {
      last.add(0, "");
    }
    return last;
  }

  private List<Row> foot(State state, int width) {
    String said = state.notice();
    if (said.isEmpty() && !state.typed().isBlank()) {
      Expansion e = expander.expand(state.typed());
      String full = String.join(" + ", e.sentences());
      said = e.isComplete() ? "Enter gives: " + full : full + "   " + e.message();
    }
    List<Row> rows = new ArrayList<>();
    List<String> wrapped = Text.wrapped(said, width, 2);
    rows.add(new Row(wrapped.get(0), Style.BOLD));
    rows.add(new Row(wrapped.size() > 1 ? wrapped.get(1) : "", Style.BOLD));
    rows.add(new Row(PROMPT + state.typed(), Style.PLAIN));
    return rows;
  }

  private static Frame fitted(List<Row> rows, Size size, int cursor) {
    List<Row> fitted = new ArrayList<>();
    for (int i = 0; i < size.height(); i++) {
      Row row = i < rows.size() ? rows.get(i) : new Row("", Style.PLAIN);
      fitted.add(new Row(Text.left(Text.harmless(row.text()), size.width()), row.style()));
    }
    return new Frame(fitted, cursor);
  }
}
