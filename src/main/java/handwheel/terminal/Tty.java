package handwheel.terminal;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.jline.terminal.Attributes;
import org.jline.terminal.Terminal;
import org.jline.terminal.TerminalBuilder;
import org.jline.terminal.spi.SystemStream;
import org.jline.terminal.spi.TerminalProvider;

/**
 * The one terminal of the process, in raw mode while a full screen is up. Whatever ends the process
 * but a kill leaves it as it was.
 */
final class Tty implements AutoCloseable {
  /** Usual attributes, cursor on, back to the usual screen. */
  private static final String LEAVE = "\u001b[0m\u001b[?25h\u001b[?1049l";

  private static final Logger JLINE = Logger.getLogger("org.jline");

  private final Terminal terminal;
  private final Attributes before;
  private final Thread hook = new Thread(this::leaveAtOnce, "leave the screen");

  private Tty(Terminal terminal) {
    this.terminal = terminal;
    this.before = terminal.enterRawMode();
    Runtime.getRuntime().addShutdownHook(hook);
  }

  /** Returns whether both the keys and the text go to a terminal. */
  static boolean isThere() {
    try {
      TerminalProvider provider = TerminalProvider.load("jni");
      return provider.isSystemStream(SystemStream.Input)
          && provider.isSystemStream(SystemStream.Output);
    } catch (IOException | LinkageError e) {
      // Without the native part nothing can be said for sure; a line mode works everywhere.
      return false;
    }
  }

  /** Opens the terminal as it is, for whoever reads lines. */
  static Terminal open() throws IOException {
    JLINE.setLevel(Level.OFF);
    return TerminalBuilder.builder()
        .system(true)
        .dumb(true)
        .graphemeCluster(false)
        .providers("jni,exec")
        .build();
  }

  /** Takes a terminal into raw mode. */
  static Tty raw(Terminal terminal) {
    return new Tty(terminal);
  }

  Terminal terminal() {
    return terminal;
  }

  /** Stops this process as Ctrl-Z would, with the terminal as it was; returns when it goes on. */
  void suspend() throws IOException {
    terminal.setAttributes(before);
    terminal.flush();
    long self = ProcessHandle.current().pid();
    Process stop = new ProcessBuilder("kill", "-TSTP", Long.toString(self)).start();
    try {
      stop.waitFor();
      Thread.sleep(100);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    terminal.enterRawMode();
  }

  private void leaveAtOnce() {
    try (FileOutputStream out = new FileOutputStream(FileDescriptor.out)) {
      out.write(LEAVE.getBytes(StandardCharsets.US_ASCII));
      out.flush();
      terminal.setAttributes(before);
    } catch (IOException | IllegalStateException e) {
      // The terminal is gone already; there is nothing left to put back.
      return;
    }
  }

  @Override
  public void close() throws IOException {
    Runtime.getRuntime().removeShutdownHook(hook);
    terminal.setAttributes(before);
    terminal.close();
  }
}
