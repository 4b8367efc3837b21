package handwheel.screen;

import handwheel.screen.Frame.Row;
import handwheel.screen.Frame.Style;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The desk of whoever reviews records: what was answered above, to be turned over page by page and
 * to choose a run from, and the line he says below.
 */
public final class ReviewDesk implements Face {
  /** A row of a table of runs begins with the run's number, a slash and its root. */
  private static final Pattern RUN = Pattern.compile("^\\s*(\\d+/[0-9a-f]{4,})\\s.*");

  private static final int MOST_LINES = 20_000;
  private static final int MOST_LETTERS = 400;
  private static final String KEYS =
      "Up/Down choose a run, Tab puts it into the line, PgUp/PgDn turn, quit leaves";

  private final String title;
  private final Talk talk;
  private final List<String> answers = new ArrayList<>();

  /** The answers as wide as the screen. */
  private final List<String> lines = new ArrayList<>();

  private String prompt = "";
  private String typed = "";
  private int chosen = -1;
  private int bottom;
  private int paneRows = 1;
  private int width = 80;
  private boolean isLeft;

  /** Whoever answers. */
  public interface Talk {
    /**
     * Says a line.
     *
     * @param line what was typed
     */
    void say(String line);

    /**
     * Takes what was answered since it was asked last.
     *
     * @return whole lines
     */
    List<String> answered();

    /**
     * Returns what is asked for now.
     *
     * @return the words before the line that is typed
     */
    String asked();

    /**
     * Returns whether nothing more will be answered.
     *
     * @return true after the last word
     */
    boolean isOver();
  }

  /**
   * Makes a desk.
   *
   * @param title what every frame begins with, after the word DRILL
   * @param talk whoever answers
   */
  public ReviewDesk(String title, Talk talk) {
    this.title = title;
    this.talk = talk;
  }

  @Override
  public void pass(long ticks) {
    boolean isAtEnd = bottom >= lines.size();
    List<String> news = talk.answered();
    answers.addAll(news);
    news.forEach(this::lay);
    if (answers.size() > MOST_LINES) {
      answers.subList(0, answers.size() - MOST_LINES).clear();
      layAgain();
    }
    bottom = isAtEnd ? lines.size() : bottom;
    prompt = talk.asked();
    isLeft |= talk.isOver();
  }

  private void lay(String answer) {
    String text = Text.harmless(answer);
    lines.addAll(text.length() <= width ? List.of(text) : Text.wrapped(text, width, 4));
  }

  private void layAgain() {
    lines.clear();
    answers.forEach(this::lay);
    chosen = -1;
    bottom = lines.size();
  }

  @Override
  public void press(Key key) {
    switch (key.kind()) {
      case LETTER -> typed = typed.length() < MOST_LETTERS ? typed + key.letter() : typed;
      case BACK -> typed = typed.isEmpty() ? typed : typed.substring(0, typed.length() - 1);
      case WORD_BACK -> typed = typed.stripTrailing().replaceFirst("\\S+$", "");
      case ESCAPE -> typed = "";
      case ENTER -> say();
      case UP -> choose(-1);
      case DOWN -> choose(1);
      case TAB -> insert();
      case PAGE_UP -> bottom = Math.max(Math.min(paneRows, lines.size()), bottom - paneRows + 1);
      case PAGE_DOWN -> bottom = Math.min(lines.size(), bottom + paneRows - 1);
      case INTERRUPT -> isLeft = true;
      case SUSPEND, REDRAW, OTHER -> {
        // Whoever owns the terminal sees to these.
      }
    }
  }

  private void say() {
    talk.say(typed);
    typed = "";
    chosen = -1;
    bottom = lines.size();
  }

  /** Goes to the next row that names a run; the first time to the last one that is seen. */
  private void choose(int step) {
    int at = chosen < 0 ? (step < 0 ? bottom : bottom - paneRows - 1) : chosen;
    for (int i = at + step; i >= 0 && i < lines.size(); i += step) {
      if (RUN.matcher(lines.get(i)).matches()) {
        chosen = i;
        bottom = Math.max(Math.min(bottom, i + paneRows), Math.min(lines.size(), i + 1));
        return;
      }
    }
  }

  private void insert() {
    if (chosen >= 0) {
      Matcher run = RUN.matcher(lines.get(chosen));
      boolean isJoined = typed.isEmpty() || typed.endsWith(" ");
      typed += run.matches() ? (isJoined ? "" : " ") + run.group(1) : "";
    }
  }

  @Override
  public Frame frame(int columns, int height) {
    if (columns != width) {
      width = Math.max(1, columns);
      layAgain();
    }
    paneRows = Math.max(1, height - 3);
    List<Row> rows = new ArrayList<>();
    rows.add(Row.of("DRILL RECORDS  " + title, Style.REVERSE));
    int from = Math.max(0, bottom - paneRows);
    for (int i = from; i < Math.min(bottom, from + paneRows); i++) {
      rows.add(Row.of(lines.get(i), i == chosen ? Style.REVERSE : Style.PLAIN));
    }
    while (rows.size() < paneRows + 1) {
      rows.add(Row.plain(""));
    }
    boolean isMore = bottom < lines.size();
    rows.add(Row.of(isMore ? "-- more below, page down --" : KEYS, Style.BOLD));
    String line = prompt + typed;
    String shown = line.substring(Math.max(0, line.length() - width + 1));
    rows.add(Row.plain(shown));
    return Painting.fitted(rows, new Size(width, height), shown.length());
  }

  @Override
  public void stoodStill(long seconds) {
    // Papers do not mind.
  }

  @Override
  public boolean isLeft() {
    return isLeft;
  }

  @Override
  public boolean isToBeRead() {
    return false;
  }
}
