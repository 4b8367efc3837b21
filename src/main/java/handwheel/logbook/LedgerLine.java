package handwheel.logbook;

/** One line of an installation's ledger. */
public sealed interface LedgerLine {
  /**
   * Returns the word that says what kind of line it is.
   *
   * @return the value of {@code k}
   */
  String kind();

  /**
   * Returns the number of the run it is about.
   *
   * @return 1 or more
   */
  int no();

  /**
   * A run was given its number, before it began.
   *
   * @param no number of the run, greater than all before it
   * @param file name of its record
   * @param before digest of the run numbered before it; 64 zeros if there was none or it was not
   *     finished by then
   */
  record Numbered(int no, String file, String before) implements LedgerLine {
    @Override
    public String kind() {
      return "numbered";
    }
  }

  /**
   * A run was finished.
   *
   * @param no number of the run
   * @param digest its digest
   * @param end the {@code h} of its end line, which binds who ran it as well
   */
  record Finished(int no, String digest, String end) implements LedgerLine {
    @Override
    public String kind() {
      return "finished";
    }
  }

  /**
   * Somebody noted something about a run. The run stays what it is.
   *
   * @param no number of the run
   * @param what {@code void}: it shall not count; {@code abandoned}: why it was not finished;
   *     {@code missing}: why its record is not here
   * @param why the reason
   * @param by who noted it
   */
  record Noted(int no, String what, String why, String by) implements LedgerLine {
    @Override
    public String kind() {
      return "noted";
    }
  }

  /**
   * Writes the line without {@code h}.
   *
   * @return one line without end of line
   */
  default String line() {
    return LedgerForms.CODEC.write(this);
  }

  /**
   * Reads a line.
   *
   * @param line one line without {@code h} and without end of line
   * @return what it says, or what is wrong and where; never an exception
   */
  static LineRead<LedgerLine> read(String line) {
    return LedgerForms.CODEC.read(line);
  }
}
