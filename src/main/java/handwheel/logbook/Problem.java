package handwheel.logbook;

/**
 * One thing wrong with a record or a ledger.
 *
 * @param line the line of the file, from 1; 0 where the whole file is meant
 * @param column the character of the line, from 1; 0 where the whole line is meant
 * @param kind what is wrong, for a program
 * @param message what is wrong, for a person, one or two sentences
 */
public record Problem(int line, int column, Kind kind, String message) {
  /** What can be wrong. */
  public enum Kind {
    /** The file could not be read at all. */
    UNREADABLE,
    /** There is no about line. */
    ABOUT_MISSING,
    /** The about line's own {@code h} is not that of its bytes. */
    ABOUT_CHANGED,
    /** The end line names another about line. */
    ABOUT_NOT_OF_END,
    /** A line is not in the one form that is used. */
    NOT_UNDERSTOOD,
    /** A line's {@code h} does not follow on the line before it. */
    CHAIN_BROKEN,
    /** {@code run} is not the first entry, or stands twice. */
    RUN_OUT_OF_PLACE,
    /** An entry stands after the score. */
    AFTER_SCORE,
    /** A line stands after the end. */
    AFTER_END,
    /** There are two ends. */
    SECOND_END,
    /** The end stands where there is no score yet. */
    END_WITHOUT_SCORE,
    /** The last line has no end of line. */
    TORN,
    /** The about line names a key and there is no signature. */
    SIGNATURE_MISSING,
    /** The signature is not that of the key in the about line over this record. */
    SIGNATURE_WRONG,
    /** There is no end: the run was broken off, or is still going on. */
    UNFINISHED,
    /** A ledger's line does not agree with the lines before it. */
    LEDGER_DISAGREES
  }

  /**
   * Prints it for a person.
   *
   * @return text such as {@code line 7, column 12: key `t` stands twice.}
   */
  public String text() {
    if (line == 0) {
      return message;
    }
    return "line " + line + (column == 0 ? "" : ", column " + column) + ": " + message;
  }
}
