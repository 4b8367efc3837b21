package handwheel.board;

import java.util.List;
import java.util.stream.Collectors;

/**
 * Tables as comma-separated values (RFC 4180). A cell that a spreadsheet would take for a formula
 * gets an apostrophe before it, so that opening a table runs nothing.
 */
public final class Csv {
  private static final String FORMULA_STARTS = "=+-@\t\r";

  private Csv() {}

  /**
   * Writes a table.
   *
   * @param head names of the columns
   * @param rows cells
   * @return text with a carriage return and line feed behind each line
   */
  public static String of(List<String> head, List<List<String>> rows) {
    StringBuilder text = new StringBuilder(line(head));
    rows.forEach(r -> text.append(line(r)));
    return text.toString();
  }

  private static String line(List<String> cells) {
    return cells.stream().map(Csv::cell).collect(Collectors.joining(",", "", "\r\n"));
  }

  static String cell(String value) {
    String safe = isFormula(value) ? "'" + value : value;
    boolean needsQuotes =
        safe.chars().anyMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
    return needsQuotes ? "\"" + safe.replace("\"", "\"\"") + "\"" : safe;
  }

  /** A plain number is none, also below zero. */
  private static boolean isFormula(String value) {
    String bare = value.stripLeading();
    return !bare.isEmpty()
        && FORMULA_STARTS.indexOf(bare.charAt(0)) >= 0
        && !bare.matches("-?\\d+(\\.\\d+)?");
  }
}
