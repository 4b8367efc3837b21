package handwheel.logbook;

/**
 * Why a line was not understood.
 *
 * @param column the character where it shows, from 1
 * @param message what was found and what was expected, one sentence
 */
public record LineTrouble(int column, String message) {
  /**
   * Prints it for a person.
   *
   * @return text such as {@code column 12: key `t` stands twice.}
   */
  public String text() {
    return "column " + column + ": " + message;
  }
}
