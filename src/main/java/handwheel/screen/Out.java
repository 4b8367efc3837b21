package handwheel.screen;

/** Takes lines of text. */
@FunctionalInterface
public interface Out {
  /**
   * Takes a line.
   *
   * @param text one harmless line without end of line
   */
  void line(String text);
}
