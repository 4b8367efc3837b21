package handwheel.app;

import handwheel.screen.ReviewDesk;
import handwheel.terminal.Conditions;
import handwheel.terminal.FullScreen;
import handwheel.terminal.Letters;
import handwheel.terminal.Shutdown;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicInteger;

/** The board on a full screen: the same lines, in a pane that can be turned over. */
final class BoardScreen {
  private static final long PATIENCE_MS = 2000;

  private final SaidLines lines = new SaidLines();
  private final Caught caught = new Caught();
  private final PrintStream out = new PrintStream(caught, true, StandardCharsets.UTF_8);
  private final AtomicInteger exit = new AtomicInteger(Exit.YES);

  /** Makes the talk that is held on the screen. */
  @FunctionalInterface
  interface Opening {
    BoardTalk talk(SaidLines lines, Console console);
  }

  private BoardScreen() {}

  static boolean isPossible() {
    return FullScreen.isPossible();
  }

  /** Runs the board until it is left. */
  static int run(String title, Opening opening) throws IOException {
    return new BoardScreen().held(title, opening);
  }

  private int held(String title, Opening opening) throws IOException {
    BoardTalk talk = opening.talk(lines, new Console(out, out));
    Thread talking = new Thread(() -> talk(talk), "board");
    talking.setDaemon(true);
    talking.start();
    boolean isWindows =
        System.getProperty("os.name", "").toLowerCase(Locale.ROOT).startsWith("windows");
    boolean isAscii = Letters.areAsciiOnly(System.getenv(), isWindows);
    try (Shutdown shutdown = new Shutdown()) {
      ReviewDesk desk = new ReviewDesk(title, new Held(talking));
      FullScreen.run(desk, new Conditions(System::nanoTime, 1, isAscii, shutdown));
    }
    lines.end();
    ended(talking);
    return exit.get();
  }

  private void talk(BoardTalk talk) {
    try {
      exit.set(talk.all());
    } catch (IOException e) {
      out.println("A file failed: " + e.getMessage() + ".");
      exit.set(Exit.NOT_UNDERSTOOD);
    }
  }

  private static void ended(Thread talking) {
    try {
      talking.join(PATIENCE_MS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** The talk in its own thread. */
  private final class Held implements ReviewDesk.Talk {
    private final Thread talking;

    Held(Thread talking) {
      this.talking = talking;
    }

    @Override
    public void say(String line) {
      out.print(line);
      out.flush();
      lines.say(line);
    }

    @Override
    public List<String> answered() {
      return caught.take();
    }

    @Override
    public String asked() {
      return caught.begun();
    }

    @Override
    public boolean isOver() {
      return !talking.isAlive();
    }
  }
}
