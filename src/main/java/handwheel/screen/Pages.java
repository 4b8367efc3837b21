package handwheel.screen;

import handwheel.screen.Frame.Row;
import handwheel.screen.Frame.Style;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The pages that cover the whole screen, as rows of the screen's width. */
final class Pages {
  private static final int INDENT = 2;

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
      case HELP, RUNNING ->
          page(
              title + "   the drill runs on",
              Paper.help(expander),
              width,
              "Any key: back to the fire room.");
      case STOPPED -> page("DRILL STOPPED", Paper.stopped(state.notice()), width, "");
      case OVER ->
          page(
              title + "   over",
              state.sheet(),
              width,
              "End of the sheet. Up, Page Up: back.   q: leave.");
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

  private static Stream<Row> rows(String line, int width) {
    String margin = " ".repeat(INDENT);
    if (isSignal(line)) {
      Frame.Span word = new Frame.Span("  " + line + "  ", Style.REVERSE);
      return Stream.of(new Row(List.of(new Frame.Span(margin, Style.PLAIN), word, blank())));
    }
    // A table's row keeps its blanks; only what is too long is broken.
    boolean isFitting = line.length() <= width - INDENT;
    List<String> parts =
        isFitting ? List.of(line) : Text.wrapped(line, Math.max(10, width - 2 * INDENT), 0);
    List<Row> rows = new ArrayList<>();
    parts.forEach(part -> rows.add(Row.plain(margin + part)));
    return rows.stream();
  }

  private static Frame.Span blank() {
    return new Frame.Span(" ", Style.PLAIN);
  }

  private static boolean isSignal(String line) {
    return line.equals("DANGER") || line.equals("WARNING") || line.equals("CAUTION");
  }
}
