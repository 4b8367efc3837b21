package handwheel.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A drawn screen.
 *
 * @param rows from top to bottom
 * @param cursorColumn column of the cursor in the last row, from 0
 */
public record Frame(List<Row> rows, int cursorColumn) {
  /**
   * Copies the list.
   *
   * @param rows from top to bottom
   * @param cursorColumn column of the cursor in the last row, from 0
   */
  public Frame {
    rows = List.copyOf(rows);
  }

  /**
   * Returns the frame for a terminal that knows nothing but ASCII.
   *
   * @return the same frame in other characters
   */
  public Frame ascii() {
    return new Frame(rows.stream().map(Row::ascii).toList(), cursorColumn);
  }

  /** How text stands out. There is no colour: nothing is lost where there is none. */
  public enum Style {
    /** As usual. */
    PLAIN,
    /** Bold. */
    BOLD,
    /** Dark on light. */
    REVERSE
  }

  /**
   * A piece of a row.
   *
   * @param text harmless text, one cell a character
   * @param style how it stands out
   */
  public record Span(String text, Style style) {
    /**
     * Makes the text harmless and one cell a character.
     *
     * @param text any text
     * @param style how it stands out
     */
    public Span {
      text = Text.oneCell(text);
    }
  }

  /**
   * One row.
   *
   * @param spans its pieces from left to right, together as wide as the screen
   */
  public record Row(List<Span> spans) {
    /**
     * Copies the list.
     *
     * @param spans its pieces from left to right
     */
    public Row {
      spans = List.copyOf(spans);
    }

    static Row of(String text, Style style) {
      return new Row(List.of(new Span(text, style)));
    }

    static Row plain(String text) {
      return of(text, Style.PLAIN);
    }

    /**
     * Returns the row without its styles.
     *
     * @return its text
     */
    public String text() {
      return spans.stream().map(Span::text).collect(Collectors.joining());
    }

    private Row ascii() {
      return new Row(spans.stream().map(s -> new Span(Ascii.of(s.text()), s.style())).toList());
    }

    /** Returns the row cut or filled with blanks to a width; the blanks are as its last piece. */
    Row fitted(int width) {
      List<Span> fitted = new ArrayList<>();
      int room = width;
      for (Span span : spans) {
        String text = span.text().substring(0, Math.min(room, span.text().length()));
        fitted.add(new Span(text, span.style()));
        room -= text.length();
      }
      Style last = spans.isEmpty() ? Style.PLAIN : spans.get(spans.size() - 1).style();
      fitted.add(new Span(" ".repeat(room), last == Style.REVERSE ? last : Style.PLAIN));
      return new Row(fitted.stream().filter(s -> !s.text().isEmpty()).toList());
    }
  }
}
