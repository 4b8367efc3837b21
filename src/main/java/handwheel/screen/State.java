package handwheel.screen;

import handwheel.drill.Mode;
import java.util.List;

/**
 * The state of the face; immutable.
 *
 * @param stage where it is
 * @param page which caution is shown
 * @param top first row shown of a page that is longer than the screen
 * @param line the order line
 * @param hearing what was heard and said
 * @param sighting what is seen now
 * @param notice what the face tells the trainee; may be empty
 * @param bangs how many exclamation marks were pressed one after another
 * @param isAsking whether one interrupt was pressed
 * @param sheet rows of the score sheet once the drill is over
 * @param size size of the screen
 * @param aid what helps him in a mode that does not count
 * @param trends what the gauges have shown
 */
record State(
    Stage stage,
    int page,
    int top,
    OrderLine line,
    Hearing hearing,
    Sighting sighting,
    String notice,
    int bangs,
    boolean isAsking,
    List<String> sheet,
    Size size,
    Aid aid,
    Trends trends) {
  State {
    sheet = List.copyOf(sheet);
  }

  static State first(Mode mode) {
    return new State(
        Stage.CAUTION,
        0,
        0,
        OrderLine.EMPTY,
        Hearing.NOTHING,
        Sighting.NONE,
        "",
        0,
        false,
        List.of(),
        Size.LEAST,
        Aid.in(mode),
        Trends.NONE);
  }

  /** Returns whether the drill runs, whatever covers it. */
  boolean isRunning() {
    return stage == Stage.RUNNING || stage == Stage.HELP;
  }

  long now() {
    return sighting.tick();
  }

  State at(Stage next) {
    return new State(
        next, 0, 0, line, hearing, sighting, "", bangs, false, sheet, size, aid, trends);
  }

  State page(int next) {
    return new State(
        stage, next, 0, line, hearing, sighting, "", bangs, false, sheet, size, aid, trends);
  }

  State top(int row) {
    return new State(
        stage, page, row, line, hearing, sighting, notice, bangs, isAsking, sheet, size, aid,
        trends);
  }

  State line(OrderLine next) {
    return new State(
        stage, page, top, next, hearing, sighting, "", bangs, false, sheet, size, aid, trends);
  }

  State noting(String text) {
    return new State(
        stage, page, top, line, hearing, sighting, text, bangs, false, sheet, size, aid, trends);
  }

  State asking(String text) {
    return new State(
        stage, page, top, line, hearing, sighting, text, bangs, true, sheet, size, aid, trends);
  }

  State bangs(int count) {
    return new State(
        stage, page, top, line, hearing, sighting, notice, count, isAsking, sheet, size, aid,
        trends);
  }

  State hearing(Hearing next) {
    return new State(
        stage, page, top, line, next, sighting, notice, bangs, isAsking, sheet, size, aid, trends);
  }

  State sighting(Sighting next) {
    Trends more = trends.with(next);
    return new State(
        stage, page, top, line, hearing, next, notice, bangs, isAsking, sheet, size, aid, more);
  }

  State sized(Size next) {
    return new State(
        stage, page, top, line, hearing, sighting, notice, bangs, isAsking, sheet, next, aid,
        trends);
  }

  State aid(Aid next) {
    return new State(
        stage, page, top, line, hearing, sighting, notice, bangs, isAsking, sheet, size, next,
        trends);
  }

  State trends(Trends next) {
    return new State(
        stage, page, top, line, hearing, sighting, notice, bangs, isAsking, sheet, size, aid, next);
  }

  State over(List<String> lines) {
    return new State(
        Stage.OVER,
        0,
        0,
        line.cleared(),
        hearing,
        sighting,
        "",
        0,
        false,
        lines,
        size,
        aid,
        trends);
  }
}
