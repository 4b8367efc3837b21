package handwheel.terminal;

/**
 * Keeps the tick at which the line now typed was begun. A line may look empty for one turn after
 * Enter, before it arrives; its first key is not forgotten for that.
 */
final class FirstKey {
  private static final long NONE = -1;

  private long tick = NONE;
  private boolean wasEmpty = true;

  /** Returns the tick of the first key; now, if nothing was typed before. */
  long at(long now, boolean isTyping) {
    if (isTyping && tick == NONE) {
      tick = now;
    } else if (!isTyping && wasEmpty) {
      tick = NONE;
    }
    wasEmpty = !isTyping;
    return tick == NONE ? now : tick;
  }

  void clear() {
    tick = NONE;
    wasEmpty = true;
  }
}
