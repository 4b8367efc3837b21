package handwheel.terminal;

import com.googlecode.lanterna.SGR;
import com.googlecode.lanterna.TerminalPosition;
import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.graphics.TextGraphics;
import com.googlecode.lanterna.screen.Screen;
import com.googlecode.lanterna.screen.TerminalScreen;
import handwheel.screen.Desk;
import handwheel.screen.Frame;
import handwheel.screen.Key;
import java.io.IOException;
import java.util.EnumSet;
import java.util.List;
import java.util.function.LongSupplier;
import org.jline.terminal.Terminal;

/** Runs a desk on a terminal: keys in, frames out, time as the clock says. */
public final class FullScreen {
  private static final long KEY_MS = 25;
  private static final long FRAME_NS = 100_000_000L;
  private static final double TICKS_PER_NS = 20e-9;
  private static final int CATCH_UP_TICKS = 200;

  private final Desk desk;
  private final LongSupplier clockNs;
  private final double pace;
  private List<Frame.Row> drawn = List.of();
  private int cursorColumn;

  private FullScreen(Desk desk, LongSupplier clockNs, double pace) {
    this.desk = desk;
    this.clockNs = clockNs;
    this.pace = pace;
  }

  /**
   * Returns whether keys come from a terminal and text goes to one.
   *
   * @return false in a pipe
   */
  public static boolean isTerminal() {
    return Tty.isThere();
  }

  /**
   * Returns whether a full screen can be had here.
   *
   * @return false in a pipe and on a dumb terminal
   */
  public static boolean isPossible() {
    String type = System.getenv("TERM");
    boolean isDumb = type == null || type.isEmpty() || type.equals("dumb");
    return !isDumb && isTerminal();
  }

  /**
   * Runs the desk until the trainee leaves.
   *
   * @param desk the face
   * @param clockNs a clock that only goes forward, ns
   * @param pace how much faster than real time
   * @throws IOException if the terminal fails
   */
  public static void run(Desk desk, LongSupplier clockNs, double pace) throws IOException {
    try (Tty tty = Tty.raw(Tty.open())) {
      new FullScreen(desk, clockNs, pace).run(tty);
    }
  }

  private void run(Tty tty) throws IOException {
    Terminal terminal = tty.terminal();
    DrawingTerminal drawing = new DrawingTerminal(terminal);
    Keys keys = new Keys(terminal.reader());
    try (Screen screen = new TerminalScreen(drawing)) {
      screen.startScreen();
      terminal.handle(Terminal.Signal.WINCH, s -> drawing.resized());
      loop(screen, keys, tty);
    }
  }

  private void loop(Screen screen, Keys keys, Tty tty) throws IOException {
    long startNs = clockNs.getAsLong();
    long lastFrameNs = startNs - FRAME_NS;
    double owed = 0;
    while (!desk.isLeft()) {
      boolean isPressed = false;
      for (var key = keys.next(KEY_MS); key.isPresent(); key = keys.next(1)) {
        desk.press(key.get());
        isPressed = true;
        if (key.get().kind() == Key.Kind.SUSPEND) {
          suspend(screen, tty);
        }
      }
      long nowNs = clockNs.getAsLong();
      owed = Math.min(CATCH_UP_TICKS, owed + (nowNs - startNs) * TICKS_PER_NS * pace);
      startNs = nowNs;
      desk.pass((long) owed);
      owed -= (long) owed;
      if (isPressed || nowNs - lastFrameNs >= FRAME_NS) {
        draw(screen);
        lastFrameNs = nowNs;
      }
    }
  }

  /** The drill stands still while the process does; its time is not made up for. */
  private void suspend(Screen screen, Tty tty) throws IOException {
    screen.stopScreen();
    tty.suspend();
    screen.startScreen();
    drawn = List.of();
  }

  private void draw(Screen screen) throws IOException {
    if (screen.doResizeIfNecessary() != null) {
      drawn = List.of();
    }
    TerminalSize size = screen.getTerminalSize();
    Frame frame = desk.frame(size.getColumns(), size.getRows());
    if (frame.rows().equals(drawn) && frame.cursorColumn() == cursorColumn) {
      return;
    }
    TextGraphics graphics = screen.newTextGraphics();
    for (int row = 0; row < frame.rows().size(); row++) {
      Frame.Row next = frame.rows().get(row);
      if (row >= drawn.size() || !drawn.get(row).equals(next)) {
        put(graphics, row, next);
      }
    }
    drawn = frame.rows();
    cursorColumn = frame.cursorColumn();
    screen.setCursorPosition(new TerminalPosition(frame.cursorColumn(), size.getRows() - 1));
    screen.refresh();
  }

  private static void put(TextGraphics graphics, int row, Frame.Row text) {
    EnumSet<SGR> style =
        switch (text.style()) {
          case PLAIN -> EnumSet.noneOf(SGR.class);
          case BOLD -> EnumSet.of(SGR.BOLD);
          case REVERSE -> EnumSet.of(SGR.REVERSE);
        };
    graphics.setModifiers(style);
    graphics.putString(0, row, text.text());
  }
}
