package handwheel.screen;

import handwheel.screen.Frame.Row;
import handwheel.screen.Frame.Style;
import java.util.ArrayList;
import java.util.List;

/**
 * The lowest rows: what the typed line stands for, what is wrong with it, and the line itself.
 *
 * @param line the order line
 * @param notice what the face tells; may be empty
 * @param isFree whether hints and standing still are allowed
 * @param width columns of the screen
 */
record Foot(OrderLine line, String notice, boolean isFree, int width) {
  private static final String PROMPT = "> ";
  private static final String KEYS =
      "? help  = heard  n wrong  , stop that  z say again  !! drill stop";
  private static final String FREE = "  + hint  . still";

  /** A list of words may need more rows than these; then it is cut. */
  private static final int MOST_ROWS = 8;

  private static final int USUAL_ROWS = 2;

  List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    if (!notice.isEmpty()) {
      rows.addAll(wrapped(notice, Style.BOLD));
    } else if (line.typed().isBlank()) {
      rows.addAll(wrapped(isFree ? KEYS + FREE : KEYS, Style.PLAIN));
    } else {
      rows.addAll(meaning());
    }
    while (rows.size() < USUAL_ROWS) {
      rows.add(0, Row.plain(""));
    }
    List<Row> foot = new ArrayList<>(rows.subList(0, Math.min(MOST_ROWS, rows.size())));
    if (rows.size() > MOST_ROWS) {
      foot.set(MOST_ROWS - 1, Row.of("  ... and more; type a letter", Style.BOLD));
    }
    foot.add(Row.plain(PROMPT + shown()));
    return foot;
  }

  private List<Row> meaning() {
    Expansion means = line.expansion();
    String full = (means.isComplete() ? "Enter: " : "") + means.full();
    List<Row> rows = new ArrayList<>();
    rows.addAll(full.isEmpty() ? List.of() : wrapped(full, Style.BOLD));
    rows.addAll(means.message().isEmpty() ? List.of() : wrapped(means.message(), Style.PLAIN));
    return rows;
  }

  private List<Row> wrapped(String text, Style style) {
    return Text.wrapped(text, width, 2).stream().map(r -> Row.of(r, style)).toList();
  }

  int cursor() {
    return PROMPT.length() + shown().length();
  }

  /** The end of the order line, as much as the row holds. */
  private String shown() {
    int room = width - PROMPT.length() - 1;
    return line.typed().substring(Math.max(0, line.typed().length() - room));
  }
}
