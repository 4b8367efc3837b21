package handwheel.logbook;

/** Takes finished lines in their order. */
@FunctionalInterface
public interface LineSink {
  /**
   * Takes the next line.
   *
   * @param line the line with its {@code h}, without end of line
   */
  void accept(String line);
}
