package handwheel.screen;

import java.util.List;

/**
 * The state of the face; immutable.
 *
 * @param stage where it is
 * @param page which caution, or the first row of the score sheet shown
 * @param typed the order line
 * @param firstKeyTick tick of the order line's first key
 * @param last the line given last
 * @param notice what the face tells the trainee; may be empty
 * @param isLeaving whether one interrupt was pressed
 * @param sheet rows of the score sheet once the drill is over
 */
record State(
    Stage stage,
    int page,
    String typed,
    long firstKeyTick,
    String last,
    String notice,
    boolean isLeaving,
    List<String> sheet) {
  State {
    sheet = List.copyOf(sheet);
  }

  static State first(boolean hasCautions) {
    Stage stage = hasCautions ? Stage.CAUTION : Stage.BRIEF;
    return new State(stage, 0, "", 0, "", "", false, List.of());
  }

  State at(Stage next, int nextPage) {
    return new State(next, nextPage, "", 0, last, "", false, sheet);
  }

  State typing(String text, long tick) {
    long first = typed.isEmpty() ? tick : firstKeyTick;
    return new State(stage, page, text, first, last, "", false, sheet);
  }

  State given(String line) {
    return new State(stage, page, "", 0, line, "", false, sheet);
  }

  State noting(String text) {
    return new State(stage, page, typed, firstKeyTick, last, text, false, sheet);
  }

  State leaving() {
    String ask = "Ctrl-C again ends the drill; it will be scored as it stands.";
    return new State(stage, page, typed, firstKeyTick, last, ask, true, sheet);
  }

  State over(List<String> lines) {
    return new State(Stage.OVER, 0, "", 0, last, "", false, lines);
  }
}
