package handwheel.screen;

/** What a full screen shows: it takes keys and time and gives frames. It never waits or writes. */
public interface Face {
  /**
   * Takes a key.
   *
   * @param key the key
   */
  void press(Key key);

  /**
   * Lets time pass.
   *
   * @param ticks how many ticks at most
   */
  void pass(long ticks);

  /**
   * Tells that the whole program stood still for a while, as when its process is stopped.
   *
   * @param seconds for how long
   */
  void stoodStill(long seconds);

  /**
   * Draws the face.
   *
   * @param width columns
   * @param height rows
   * @return that many rows of that width
   */
  Frame frame(int width, int height);

  /**
   * Returns whether whoever sat here has left.
   *
   * @return true when nothing more is to be drawn
   */
  boolean isLeft();

  /**
   * Returns whether what is shown must be read before a key counts.
   *
   * @return true on cautions and the like
   */
  boolean isToBeRead();
}
