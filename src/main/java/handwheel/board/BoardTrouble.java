package handwheel.board;

import java.io.IOException;

/** Something the board needs failed; the message is for people. */
public final class BoardTrouble extends IOException {
  private static final long serialVersionUID = 1L;

  BoardTrouble(String message, Throwable cause) {
    super(message, cause);
  }
}
