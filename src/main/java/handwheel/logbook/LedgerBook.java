package handwheel.logbook;

import java.util.List;

/**
 * What a ledger says, and what is wrong with it. Every line that could be understood counts, even
 * behind a break: a number once given must not be given again.
 *
 * @param runs the runs in the order of their numbers
 * @param lastH what the next line has to follow on
 * @param tornBytes how many bytes at the end belong to no line
 * @param notes what was noted about runs, in the order of the file
 * @param problems everything that is wrong
 */
public record LedgerBook(
    List<LedgerRun> runs,
    String lastH,
    int tornBytes,
    List<LedgerLine.Noted> notes,
    List<Problem> problems) {
  /**
   * Copies the lists.
   *
   * @param runs the runs in the order of their numbers
   * @param lastH what the next line has to follow on
   * @param tornBytes how many bytes at the end belong to no line
   * @param notes what was noted about runs, in the order of the file
   * @param problems everything that is wrong
   */
  public LedgerBook {
    runs = List.copyOf(runs);
    notes = List.copyOf(notes);
    problems = List.copyOf(problems);
  }

  /**
   * Returns the greatest number given so far.
   *
   * @return 0 if there is none
   */
  public int lastNo() {
    return runs.isEmpty() ? 0 : runs.get(runs.size() - 1).no();
  }

  /**
   * Returns the digest of the last run.
   *
   * @return 64 zeros if there is none or it is not finished
   */
  public String lastDigest() {
    return runs.isEmpty() ? Chain.START : runs.get(runs.size() - 1).digest();
  }
}
