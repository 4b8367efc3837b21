package handwheel.app;

import handwheel.screen.Desk;
import handwheel.screen.LineDesk;
import handwheel.screen.PipeDesk;
import handwheel.screen.Script;
import handwheel.screen.Watch;
import handwheel.terminal.Conditions;
import handwheel.terminal.FullScreen;
import handwheel.terminal.LineFace;
import handwheel.terminal.PipeFace;
import java.io.IOException;
import java.util.Optional;

/** A face for a drill: a full screen where there is one, else lines. */
interface DrillFace {
  /**
   * How a drill was left.
   *
   * @param watch the drill, scored; empty if it was not begun
   * @param message what to tell; may be empty
   * @param isInterrupted whether it was broken off and not ended by whoever was there
   */
  record Left(Optional<Watch> watch, Optional<String> message, boolean isInterrupted) {}

  /** Runs the drill until it is over or left; one that was begun is scored then. */
  Left run(Conditions conditions, Console console) throws IOException;

  static boolean isAttended() {
    return LineFace.isAttended();
  }

  static DrillFace choose(Script script, boolean isLines) {
    if (!isAttended()) {
      return (conditions, console) -> piped(new PipeDesk(script), conditions, console);
    }
    return isLines || !FullScreen.isPossible()
        ? (conditions, console) -> lines(new LineDesk(script), conditions, console)
        : (conditions, console) -> screen(new Desk(script), conditions);
  }

  private static Left screen(Desk desk, Conditions conditions) throws IOException {
    FullScreen.run(desk, conditions);
    boolean isOver = desk.watch().map(Watch::isOver).orElse(true);
    desk.end(why(desk.isReal(), conditions));
    Optional<String> result = desk.watch().flatMap(Watch::result);
    return new Left(desk.watch(), desk.isReal() ? Optional.of(real()) : result, !isOver);
  }

  private static Left lines(LineDesk desk, Conditions conditions, Console console)
      throws IOException {
    LineFace.run(desk, conditions, System.in, console.out());
    return left(desk, conditions);
  }

  private static Left piped(PipeDesk pipe, Conditions conditions, Console console) {
    PipeFace.run(pipe, conditions, System.in, console.out());
    return left(pipe.desk(), conditions);
  }

  private static Left left(LineDesk desk, Conditions conditions) {
    boolean isOver = desk.isOver() || desk.watch().isEmpty();
    desk.end(why(desk.isReal(), conditions), line -> {});
    Optional<String> message = desk.isReal() ? Optional.of(real()) : Optional.empty();
    return new Left(desk.watch(), message, !isOver);
  }

  private static String real() {
    return "DRILL STOPPED for a real casualty.";
  }

  private static String why(boolean isReal, Conditions conditions) {
    if (isReal) {
      return "a real casualty";
    }
    return conditions.shutdown().isAsked()
        ? "the program was told to stop"
        : "the terminal is gone";
  }
}
