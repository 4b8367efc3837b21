package handwheel.terminal;

import handwheel.screen.LineDesk;
import handwheel.screen.Out;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.util.Optional;
import org.jline.terminal.spi.SystemStream;

/**
 * The line mode with somebody at a terminal: text is only ever appended, and time passes while
 * lines are typed.
 */
public final class LineFace {
  private static final long POLL_MS = 25;

  private final LineDesk desk;
  private final Conditions conditions;
  private final Lines lines;
  private final Out out;
  private final Pacer pacer;

  private LineFace(LineDesk desk, Conditions conditions, Lines lines, Out out) {
    this.desk = desk;
    this.conditions = conditions;
    this.lines = lines;
    this.out = conditions.lettersOf(out);
    this.pacer = new Pacer(conditions.clockNs(), conditions.pace());
  }

  /**
   * Returns whether somebody is at a terminal.
   *
   * @return false if lines come from a pipe or a file
   */
  public static boolean isAttended() {
    return Tty.is(SystemStream.Input);
  }

  /**
   * Runs a drill with somebody at a terminal, until it is over or he leaves.
   *
   * @param desk the face
   * @param conditions clock, pace and the like
   * @param in where lines come from if the terminal can do nothing but lines
   * @param print where text goes then
   * @throws IOException if the terminal fails
   */
  public static void run(LineDesk desk, Conditions conditions, InputStream in, PrintStream print)
      throws IOException {
    if (!FullScreen.isPossible()) {
      Lines lines = new Lines();
      lines.readInBackground(in);
      new LineFace(desk, conditions, lines, print::println).attended(Optional.empty());
      return;
    }
    conditions.shutdown().afterwards(Tty::restoreDiscipline);
    try (Prompt prompt = new Prompt(Tty.open(), desk::offered)) {
      LineFace face = new LineFace(desk, conditions, prompt.lines(), prompt::print);
      face.attended(Optional.of(prompt));
    } catch (IllegalStateException e) {
      // A terminal that is closed under a program that is told to stop is no failure.
      if (!conditions.shutdown().isAsked()) {
        throw e;
      }
    } finally {
      Tty.restoreDiscipline();
    }
  }

  private boolean isGoingOn() {
    return !desk.isOver() && !desk.isLeft() && !conditions.shutdown().isAsked();
  }

  private void attended(Optional<Prompt> prompt) {
    FirstKey firstKey = new FirstKey();
    desk.begin(out);
    while (isGoingOn()) {
      Optional<Lines.Line> line = lines.poll(POLL_MS);
      long tick = firstKey.at(desk.now(), prompt.map(Prompt::isTyping).orElse(false));
      if (line.isPresent()) {
        firstKey.clear();
        attended(line.get(), tick);
      }
      pass();
    }
  }

  private void attended(Lines.Line line, long firstKeyTick) {
    switch (line.kind()) {
      case TEXT -> desk.typed(line.text(), firstKeyTick, out);
      case INTERRUPT -> desk.interrupted(out);
      case END -> desk.leave("no more lines came", out);
    }
  }

  private void pass() {
    Pacer.Turn turn = pacer.turn();
    if (turn.stoodStillS() > 0) {
      desk.stoodStill(turn.stoodStillS(), out);
    }
    desk.pass(turn.ticks(), out);
  }
}
