package handwheel.logbook;

/** The line form of an entry: a JSON object (RFC 8259) without {@code h}, {@code k} first. */
public final class EntryLine {
  private static final LineCodec<Entry> CODEC = new LineCodec<>(EntryForms.ALL, Entry::kind);

  private EntryLine() {}

  /**
   * Writes an entry. Keys stand in the order of the record's components; there are no blanks. Half
   * of a surrogate pair, which is no character, is written as U+FFFD.
   *
   * @param entry the entry
   * @return one line without end of line
   */
  public static String write(Entry entry) {
    return CODEC.write(entry);
  }

  /**
   * Reads an entry. A line is understood only if writing the entry gives the same text again.
   *
   * @param line one line without {@code h} and without end of line
   * @return the entry, or what is wrong and where; never an exception
   */
  public static LineRead<Entry> read(String line) {
    return CODEC.read(line);
  }
}
