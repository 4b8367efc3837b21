package handwheel.logbook;

/**
 * One run of an installation.
 *
 * @param no number of the run
 * @param file name of its record
 * @param before digest of the run numbered before it; 64 zeros if there was none or it was not
 *     finished by then
 * @param digest digest of this run; 64 zeros while it is not finished
 * @param end {@code h} of the end line of its record; 64 zeros while it is not finished
 */
public record LedgerRun(int no, String file, String before, String digest, String end) {
  /**
   * Returns whether the run came to its end.
   *
   * @return true once its digest is known
   */
  public boolean isFinished() {
    return !digest.equals(Chain.START);
  }
}
