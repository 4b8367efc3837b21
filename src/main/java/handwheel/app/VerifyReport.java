package handwheel.app;

import handwheel.debrief.Trouble;
import java.io.IOException;
import java.util.List;

/** Takes what verifying found, record by record. */
interface VerifyReport {
  /**
   * What was found of one record.
   *
   * @param record the file
   * @param troubles why it does not hold; none if it does
   * @param key public key of whoever signed it, hex; empty if nobody did
   * @param hasLedger whether there is a ledger beside it
   * @param digest its root; empty if it has no end
   */
  record Row(String record, List<Trouble> troubles, String key, boolean hasLedger, String digest) {
    /**
     * Copies the list.
     *
     * @param record the file
     * @param troubles why it does not hold; none if it does
     * @param key public key of whoever signed it, hex; empty if nobody did
     * @param hasLedger whether there is a ledger beside it
     * @param digest its root; empty if it has no end
     */
    public Row {
      troubles = List.copyOf(troubles);
    }
  }

  /** Takes a record. */
  void record(Row row);

  /** Takes a trouble of a ledger or of minutes. */
  void book(String file, String kind, String text);

  /** Tells what there is to tell at the end; returns whether everything held. */
  boolean end(Console console) throws IOException;
}
