package handwheel.terminal;

import handwheel.screen.Out;
import handwheel.screen.PipeDesk;
import java.io.InputStream;
import java.io.PrintStream;
import java.util.Optional;

/**
 * The line mode from a pipe or a file. Time passes at the pace until the lines are at their end,
 * and then as fast as it goes: lines that are all there from the start wait for nobody.
 */
public final class PipeFace {
  private static final long POLL_MS = 25;

  /** Lines that are there from the start come within this time. */
  private static final long START_MS = 250;

  private final PipeDesk pipe;
  private final Conditions conditions;
  private final Lines lines = new Lines();
  private final Out out;

  private PipeFace(PipeDesk pipe, Conditions conditions, Out out) {
    this.pipe = pipe;
    this.conditions = conditions;
    this.out = conditions.lettersOf(out);
  }

  /**
   * Runs a drill to its end.
   *
   * @param pipe the face
   * @param conditions clock, pace and the like
   * @param in the lines
   * @param print where the text goes
   */
  public static void run(PipeDesk pipe, Conditions conditions, InputStream in, PrintStream print) {
    PipeFace face = new PipeFace(pipe, conditions, print::println);
    face.lines.readInBackground(in);
    face.run();
  }

  private void run() {
    pipe.pass(0, out);
    boolean isEnded = take(START_MS);
    Pacer pacer = new Pacer(conditions.clockNs(), conditions.pace());
    while (isGoingOn() && !isEnded) {
      isEnded = take(POLL_MS);
      if (conditions.pace() == 0) {
        pipe.take("", out);
      } else {
        pass(pacer.turn());
      }
    }
    if (isGoingOn()) {
      pipe.finish(out);
    }
  }

  private void pass(Pacer.Turn turn) {
    if (turn.stoodStillS() > 0) {
      pipe.desk().stoodStill(turn.stoodStillS(), out);
    }
    pipe.pass(turn.ticks(), out);
  }

  private boolean isGoingOn() {
    return !pipe.desk().isOver() && !pipe.desk().isLeft() && !conditions.shutdown().isAsked();
  }

  /** Keeps the lines that come without a pause; returns whether there will be no more. */
  private boolean take(long ms) {
    Optional<Lines.Line> line = lines.poll(ms);
    while (line.isPresent() && line.get().is(Lines.Kind.TEXT)) {
      pipe.queue(line.get().text());
      line = lines.poll(1);
    }
    return line.isPresent();
  }
}
