package handwheel.logbook;

import java.io.Reader;

/**
 * Hands out a line in pieces and counts. Fed one character at a time, the JSON reader takes no more
 * than it needs, so that the count is the column where it stands; fed whole, it is fast.
 */
final class CharFeed extends Reader {
  private final String line;
  private final int piece;
  private int given;
  private boolean ranOut;

  private CharFeed(String line, int piece) {
    this.line = line;
    this.piece = piece;
  }

  static CharFeed whole(String line) {
    return new CharFeed(line, line.length());
  }

  static CharFeed single(String line) {
    return new CharFeed(line, 1);
  }

  /** Returns the column of the last character handed out, from 1. */
  int column() {
    return given;
  }

  /** Returns whether more was asked for than the line has. */
  boolean ranOut() {
    return ranOut;
  }

  @Override
  public int read(char[] into, int from, int length) {
    if (given == line.length()) {
      ranOut = true;
      return -1;
    }
    int n = Math.min(Math.min(piece, length), line.length() - given);
    line.getChars(given, given + n, into, from);
    given += n;
    return n;
  }

  @Override
  public void close() {}
}
