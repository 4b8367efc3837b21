package handwheel.screen;

import java.util.List;

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

  /** How a row stands out. Colour is never used alone. */
  public enum Style {
    /** As usual. */
    PLAIN,
    /** Bold. */
    BOLD,
    /** Dark on light. */
    REVERSE
  }

  /**
   * One row.
   *
   * @param text at most as wide as the screen
   * @param style how it stands out
   */
  public record Row(String text, Style style) {}
}
