package handwheel.logbook;

/**
 * Reads a whole record. Any byte changed, added or taken away shows as a problem; so does a missing
 * end. What it cannot show is a record forged as a whole, with every {@code h} worked out anew: for
 * that the run is simulated again, and its digest held against the ledger.
 */
public final class RecordText {
  private RecordText() {}

  /**
   * Reads a record.
   *
   * @param file the bytes of the file
   * @return what it says and what is wrong with it; never an exception
   */
  public static RunRecord read(byte[] file) {
    return new RecordReading(FileLines.of(file)).read();
  }
}
