package handwheel.screen;

/**
 * A size in characters.
 *
 * @param width columns
 * @param height rows
 */
record Size(int width, int height) {
  /** The smallest screen a drill fits on. */
  static final Size LEAST = new Size(80, 24);

  boolean isTooSmall() {
    return width < LEAST.width || height < LEAST.height;
  }

  /** Returns how many rows of text a page has between its head and its foot. */
  int pageRows() {
    return Math.max(1, height - 4);
  }
}
