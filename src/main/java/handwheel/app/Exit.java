package handwheel.app;

/** Exit codes. */
final class Exit {
  /** Yes: it was done, it passed, it holds. */
  static final int YES = 0;

  /** No: failed, unsound, does not verify. */
  static final int NO = 1;

  /** Input or usage was not understood. */
  static final int NOT_UNDERSTOOD = 2;

  /** Interrupted. */
  static final int INTERRUPTED = 3;

  /** A fault of the program itself. */
  static final int OUR_FAULT = 4;

  private Exit() {}
}
