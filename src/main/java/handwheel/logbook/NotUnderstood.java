package handwheel.logbook;

import java.io.IOException;

/** Carries a trouble out of the depth of a line; never leaves this package. */
final class NotUnderstood extends IOException {
  private static final long serialVersionUID = 1L;

  private final int column;

  NotUnderstood(int column, String message) {
    super(message);
    this.column = column;
  }

  int column() {
    return column;
  }
}
