package handwheel.debrief;

/**
 * One thing about a record that does not hold.
 *
 * @param kind what does not hold
 * @param line the line of the record, from 1; 0 where the whole record is meant
 * @param text what was found, for people
 */
public record Trouble(Kind kind, int line, String text) {
  /** What can fail to hold. */
  public enum Kind {
    /** The file is torn or has no end: the run was broken off. */
    UNFINISHED("unfinished"),
    /** The bytes are not those that were written. */
    CHAIN("chain"),
    /** The signature is missing or not that of the key. */
    SIGNATURE("signature"),
    /** Made by another version of the program: no sign of tampering, and no proof either. */
    ENGINE("engine"),
    /** The ship is not here, or is another one. */
    SHIP("ship"),
    /** The script is not here, or is another one. */
    SCRIPT("script"),
    /** The chain holds, and the inputs do not give these lines. */
    SIMULATION("simulation"),
    /** The run is the same, and its score is another. */
    SCORE("score"),
    /** The ledger of the installation says something else. */
    LEDGER("ledger");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /**
     * Returns the word for reports.
     *
     * @return one lower-case word
     */
    public String word() {
      return word;
    }
  }
}
