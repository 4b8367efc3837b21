package handwheel.screen;

/**
 * The line mode where lines come from a pipe or a file and nobody is at a terminal. The cautions
 * are said and count as acknowledged; a line may say at which second it is said.
 */
public final class PipeDesk {
  private final LineDesk desk;
  private final TimedLines lines = new TimedLines();
  private boolean isBegun;

  /**
   * Sets up the face.
   *
   * @param script what the drill is made from
   */
  public PipeDesk(Script script) {
    this.desk = new LineDesk(script);
  }

  /**
   * Returns the face behind it.
   *
   * @return the face, which says how the drill stands
   */
  public LineDesk desk() {
    return desk;
  }

  /**
   * Keeps a line until it is due.
   *
   * @param line {@code 12 everyone leave} is said at second 12; without a second it is said as soon
   *     as it may; empty or after a {@code #} it says nothing
   */
  public void queue(String line) {
    lines.add(line);
  }

  /**
   * Takes a line and lets the time pass until it is said.
   *
   * @param line as in {@link #queue}
   * @param out takes the text
   */
  public void take(String line, Out out) {
    begin(out);
    queue(line);
    while (!lines.isEmpty() && isGoingOn()) {
      pass(desk.isStopped() ? 0 : lines.nextTick(desk.now()) - desk.now(), out);
    }
  }

  /**
   * Lets time pass; lines that are kept are said when they are due.
   *
   * @param ticks how many ticks at most
   * @param out takes the text
   */
  public void pass(long ticks, Out out) {
    begin(out);
    due(out);
    for (long i = 0; i < ticks && isGoingOn(); i++) {
      desk.pass(1, out);
      due(out);
    }
  }

  /**
   * Runs the drill to its end: no more lines will come. A drill that stands stopped is ended, since
   * nobody is there to let it go on.
   *
   * @param out takes the text
   */
  public void finish(Out out) {
    take("", out);
    while (isGoingOn()) {
      if (desk.isStopped()) {
        desk.end("stopped, and nobody let it go on", out);
      } else {
        desk.pass(1, out);
      }
    }
  }

  private void begin(Out out) {
    if (!isBegun) {
      isBegun = true;
      desk.beginUnattended(out);
    }
  }

  private boolean isGoingOn() {
    return !desk.isOver() && !desk.isLeft();
  }

  /** Says every line that is due now; a stopped drill waits for no time. */
  private void due(Out out) {
    while (!lines.isEmpty() && isGoingOn() && isDue()) {
      desk.typed(lines.take(desk.now()), out);
    }
  }

  private boolean isDue() {
    return desk.isStopped() || lines.nextTick(desk.now()) <= desk.now();
  }
}
