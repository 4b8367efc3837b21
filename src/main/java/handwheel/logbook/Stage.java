package handwheel.logbook;

/** How far a record has come: what may be its next line. */
enum Stage {
  /** Only {@code run}. */
  RUN,
  /** Any entry but a second {@code run}. */
  RUNNING,
  /** Only {@code end}. */
  SCORED,
  /** Only {@code signed}, and only in a record that is to be signed. */
  OVER,
  /** Nothing. */
  SIGNED;

  boolean admits(Entry entry) {
    return switch (this) {
      case RUN -> entry instanceof Entry.Run;
      case RUNNING -> !(entry instanceof Entry.Run);
      case SCORED, OVER, SIGNED -> false;
    };
  }

  static Stage after(Entry entry) {
    return entry instanceof Entry.Score ? SCORED : RUNNING;
  }
}
