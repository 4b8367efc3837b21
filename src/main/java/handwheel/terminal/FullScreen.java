package handwheel.terminal;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.screen.Screen;
import com.googlecode.lanterna.screen.TerminalScreen;
import handwheel.screen.Face;
import handwheel.screen.Frame;
import handwheel.screen.Key;
import java.io.IOException;
import java.util.Optional;
import org.jline.terminal.Terminal;
import org.jline.terminal.spi.SystemStream;

/** Runs a desk on a terminal: keys in, frames out, time as the clock says. */
public final class FullScreen {
  private static final long KEY_MS = 50;
  private static final long FRAME_NS = 200_000_000L;

  /** A key held down repeats faster than this, and says nothing about a caution. */
  private static final long SILENCE_NS = 200_000_000L;

  private final Face desk;
  private final Conditions conditions;
  private final Tty tty;
  private final Screen screen;
  private final Brush brush;
  private final Keys keys;
  private final Pacer pacer;
  private long lastKeyNs;
  private long lastFrameNs;

  private FullScreen(Face desk, Conditions conditions, Tty tty, Screen screen) {
    this.desk = desk;
    this.conditions = conditions;
    this.tty = tty;
    this.screen = screen;
    this.brush = new Brush(screen);
    this.keys = new Keys(tty.terminal().reader());
    this.pacer = new Pacer(conditions.clockNs(), conditions.pace());
  }

  /**
   * Returns whether a full screen can be had here.
   *
   * @return false in a pipe and on a dumb terminal
   */
  public static boolean isPossible() {
    String type = System.getenv("TERM");
    boolean isDumb = type != null && type.equals("dumb");
    return !isDumb && Tty.is(SystemStream.Input) && Tty.is(SystemStream.Output);
  }

  /**
   * Runs the desk until the trainee leaves, the terminal is lost or the program is told to stop.
   *
   * @param desk the face
   * @param conditions clock, pace and the like
   * @throws IOException if the terminal fails
   */
  public static void run(Face desk, Conditions conditions) throws IOException {
    conditions.shutdown().afterwards(Tty::restoreDiscipline);
    try {
      Terminal terminal = Tty.open();
      Tty.onInterrupt(conditions.shutdown()::ask);
      on(terminal, desk, conditions);
    } finally {
      Tty.restoreDiscipline();
    }
  }

  /** Runs the desk on a terminal, which is closed at the end. */
  static void on(Terminal terminal, Face desk, Conditions conditions) throws IOException {
    try (Tty tty = Tty.raw(terminal, conditions.shutdown())) {
      try (Screen screen = opened(terminal)) {
        new FullScreen(desk, conditions, tty, screen).loop();
      }
      tty.screenLeft();
    } catch (IOException | IllegalStateException e) {
      // A terminal that is closed under a program that is told to stop is no failure.
      if (!conditions.shutdown().isAsked()) {
        throw e;
      }
    }
  }

  private static Screen opened(Terminal terminal) throws IOException {
    DrawingTerminal drawing = new DrawingTerminal(terminal);
    Screen screen = new TerminalScreen(drawing);
    screen.startScreen();
    terminal.handle(Terminal.Signal.WINCH, s -> drawing.resized());
    return screen;
  }

  private void loop() throws IOException {
    draw();
    keys.discard();
    while (!desk.isLeft() && !keys.isLost() && !conditions.shutdown().isAsked()) {
      boolean isPressed = press();
      Pacer.Turn turn = pacer.turn();
      if (turn.stoodStillS() > 0) {
        desk.stoodStill(turn.stoodStillS());
        brush.forget();
      }
      desk.pass(turn.ticks());
      if (isPressed || pacer.lastNs() - lastFrameNs >= FRAME_NS) {
        draw();
      }
    }
  }

  /** Takes the keys that wait; returns whether there were any. */
  private boolean press() throws IOException {
    boolean isPressed = false;
    Optional<Key> key = keys.next(KEY_MS);
    while (key.isPresent() && !desk.isLeft()) {
      isPressed = true;
      press(key.get());
      key = keys.next(1);
    }
    return isPressed;
  }

  private void press(Key key) throws IOException {
    long nowNs = conditions.clockNs().getAsLong();
    boolean isTooSoon = desk.isToBeRead() && nowNs - lastKeyNs < SILENCE_NS;
    lastKeyNs = nowNs;
    boolean isAcknowledging = key.kind() == Key.Kind.ENTER;
    if (isAcknowledging && isTooSoon) {
      return;
    }
    desk.press(key);
    if (key.kind() == Key.Kind.SUSPEND) {
      suspend();
    } else if (key.kind() == Key.Kind.REDRAW) {
      brush.forget();
    }
  }

  /** A running drill was stopped by the same key; its time is not made up for. */
  private void suspend() throws IOException {
    draw();
    screen.stopScreen();
    tty.suspend();
    screen.startScreen();
    pacer.turn();
    brush.forget();
  }

  private void draw() throws IOException {
    TerminalSize size = brush.size();
    Frame frame = desk.frame(size.getColumns(), size.getRows());
    brush.draw(conditions.isAscii() ? frame.ascii() : frame);
    lastFrameNs = pacer.lastNs();
  }
}
