package handwheel.screen;

import handwheel.screen.Frame.Row;
import handwheel.screen.Frame.Span;
import handwheel.screen.Frame.Style;
import java.util.List;
import java.util.stream.Stream;

/** The pages that cover the whole screen, as rows of the screen's width. */
final class Pages {
  private static final String MARGIN = "  ";

  /** Ends a reversed word, so that the rest of its row is plain. */
  private static final Span END = new Span(" ", Style.PLAIN);

  private final Script script;
  private final Expander expander;

  Pages(Script script, Expander expander) {
    this.script = script;
    this.expander = expander;
  }

  /**
   * A page.
   *
   * @param head what stands above it
   * @param rows its text, which may be longer than the screen
   * @param foot what a key does, once the last row is in sight
   */
  record Page(String head, List<Row> rows, String foot) {
    Page {
      rows = List.copyOf(rows);
    }

    /** Returns whether rows stand below the screen. */
    boolean hasMore(State state) {
      return state.top() + state.size().pageRows() < rows.size();
    }

    /** Returns the lowest first row that still fills the screen. */
    int lastTop(State state) {
      return Math.max(0, rows.size() - state.size().pageRows());
    }
  }

  int cautions() {
    return Paper.cautions(script.casualty());
  }

  /** Returns the page of a stage; while the drill runs there is none but the help. */
  Page of(State state) {
    String title = title();
    int width = state.size().width();
    return switch (state.stage()) {
      case CAUTION ->
          page(
              title,
              Paper.caution(script.casualty(), state.page()),
              width,
              "Enter: I have read this and keep to it.");
      case BRIEF ->
          page(
              title,
              Paper.brief(script.casualty(), script.ship(), script.mode()),
              width,
              "Enter: I have the watch.");
      case HELP, RUNNING, FROZEN ->
          page(
              title + "   the drill runs on",
              Paper.help(expander),
              width,
              "Any key: back to the fire room.");
      case STOPPED -> page("DRILL STOPPED", Paper.stopped(state.notice()), width, "");
      case OVER -> sheet(title + "   over", state.sheet(), width);
    };
  }

  /** Returns what every frame begins with. */
  String title() {
    return "DRILL  " + script.casualty().title() + "  " + script.mode().word();
  }

  private static Page page(String head, List<String> lines, int width, String foot) {
    List<Row> rows = lines.stream().flatMap(l -> rows(l, width)).toList();
    return new Page(head, rows, foot);
  }

  /** The sheet has its own margins and columns. */
  private static Page sheet(String head, List<String> lines, int width) {
    List<Row> rows =
        lines.stream().flatMap(l -> broken(l, width).stream()).map(Row::plain).toList();
    return new Page(head, rows, "End of the sheet. Up, Page Up: back.   q: leave.");
  }

  private static Stream<Row> rows(String line, int width) {
    if (isSignal(line)) {
      Span word = new Span("  " + line + "  ", Style.REVERSE);
      return Stream.of(new Row(List.of(new Span(MARGIN, Style.PLAIN), word, END)));
    }
    return broken(line, width - MARGIN.length()).stream().map(part -> Row.plain(MARGIN + part));
  }

  /** A table's row keeps its blanks; only what is too long is broken. */
  private static List<String> broken(String line, int width) {
    return line.length() <= width
        ? List.of(line)
        : Text.wrapped(line, Math.max(10, width - MARGIN.length()), 0);
  }

  private static boolean isSignal(String line) {
    return line.equals("DANGER") || line.equals("WARNING") || line.equals("CAUTION");
  }
}
