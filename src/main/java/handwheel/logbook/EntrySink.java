package handwheel.logbook;

/** Takes the entries of a run in their order. */
@FunctionalInterface
public interface EntrySink {
  /**
   * Takes the next entry.
   *
   * @param entry the entry
   */
  void accept(Entry entry);
}
