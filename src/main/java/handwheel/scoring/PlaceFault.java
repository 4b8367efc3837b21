package handwheel.scoring;

/**
 * A step done at a place it should not have been done at.
 *
 * @param isUnsafe whether the place hurts before the work is done; otherwise it is the wrong side
 * @param tick when the order was said
 * @param reading the figures behind it, for people
 * @param what what happened, for people
 * @param isChargedByRule whether a broken rule against being sent there charges it already
 */
record PlaceFault(
    boolean isUnsafe, long tick, String reading, String what, boolean isChargedByRule) {
  /** What is lost: all, or so much that half, rounded down, is earned. */
  int lostOf(int points) {
    if (isChargedByRule) {
      return 0;
    }
    return isUnsafe ? points : points - points / 2;
  }

  PlaceFault chargedByRule() {
    return new PlaceFault(isUnsafe, tick, reading, what, true);
  }
}
