package handwheel.terminal;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.jline.terminal.Attributes;
import org.jline.terminal.Terminal;
import org.jline.terminal.TerminalBuilder;
import org.jline.terminal.spi.SystemStream;
import org.jline.terminal.spi.TerminalProvider;
import org.jline.utils.InfoCmp;
import org.jspecify.annotations.Nullable;

/**
 * The one terminal of the process. Whatever ends the process but a kill leaves it as it was: what
 * is put back goes straight to the system, since the library may have closed its own way already.
 */
final class Tty implements AutoCloseable {
  /** Usual attributes, cursor on, back to the usual screen. */
  private static final String LEAVE = "\u001b[0m\u001b[?25h\u001b[?1049l";

  private static final Logger JLINE = Logger.getLogger("org.jline");

  /** The second works where the first may not unpack its native part. */
  private static final List<String> PROVIDERS = List.of("jni", "exec");

  private final Terminal terminal;
  private final Shutdown shutdown;
  private final Attributes before;
  private boolean isScreenLeft;

  private Tty(Terminal terminal, Shutdown shutdown) {
    this.terminal = terminal;
    this.shutdown = shutdown;
    this.before = terminal.enterRawMode();
    shutdown.lastResort(this::leaveAtOnce);
  }

  /** Returns whether a stream of this process is a terminal. */
  static boolean is(SystemStream stream) {
    JLINE.setLevel(Level.OFF);
    return PROVIDERS.stream()
        .flatMap(provider -> says(provider, stream).stream())
        .findFirst()
        .orElse(false);
  }

  /** Returns what a provider knows of a stream; empty if it does not work here. */
  private static Optional<Boolean> says(String provider, SystemStream stream) {
    try {
      return Optional.of(TerminalProvider.load(provider).isSystemStream(stream));
    } catch (IOException | LinkageError e) {
      return Optional.empty();
    }
  }

  /** Opens the terminal as it is, for whoever reads lines. */
  static Terminal open() throws IOException {
    JLINE.setLevel(Level.OFF);
    preload(System.getenv("TERM"));
    return TerminalBuilder.builder()
        .system(true)
        .dumb(true)
        .graphemeCluster(false)
        .providers(String.join(",", PROVIDERS))
        .build();
  }

  /** Spares the call of another program that tells what the terminal can. */
  private static void preload(@Nullable String type) {
    String known = type == null ? null : InfoCmp.getDefaultInfoCmp(type);
    if (known != null) {
      InfoCmp.setLoadedInfoCmp(type, known);
    }
  }

  /**
   * Puts the number of the line discipline back, which the native part of the library overwrites
   * with chance on Linux whenever it sets modes. The usual one is 0.
   */
  static void restoreDiscipline() {
    if (!System.getProperty("os.name", "").equals("Linux")) {
      return;
    }
    try {
      new ProcessBuilder("stty", "line", "0")
          .redirectInput(ProcessBuilder.Redirect.INHERIT)
          .redirectError(ProcessBuilder.Redirect.DISCARD)
          .start()
          .waitFor();
    } catch (IOException e) {
      // Where there is no such program the number stays; the system does not act on it.
      return;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** Takes a terminal into raw mode. */
  static Tty raw(Terminal terminal, Shutdown shutdown) {
    return new Tty(terminal, shutdown);
  }

  /**
   * Lets something be done when the program is interrupted from outside; the library leaves that to
   * the system, which would end it with the screen up. Not for Control and C, which is a key here.
   */
  static void onInterrupt(Runnable act) {
    for (String provider : PROVIDERS) {
      try {
        TerminalProvider.load(provider).registerSignal("INT", act);
        return;
      } catch (IOException | LinkageError e) {
        JLINE.log(Level.FINE, "no signals from " + provider, e);
      }
    }
  }

  /** Tells that the usual screen is back. */
  void screenLeft() {
    isScreenLeft = true;
  }

  Terminal terminal() {
    return terminal;
  }

  /** Stops this process as Ctrl-Z would, with the terminal as it was; returns when it goes on. */
  void suspend() throws IOException {
    terminal.setAttributes(before);
    terminal.flush();
    stopProcess();
    terminal.enterRawMode();
  }

  /** Stops this process; returns when it goes on. */
  static void stopProcess() throws IOException {
    long self = ProcessHandle.current().pid();
    Process stop = new ProcessBuilder("kill", "-TSTP", Long.toString(self)).start();
    try {
      stop.waitFor();
      Thread.sleep(100);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private void leaveAtOnce() {
    try {
      // The descriptor belongs to the process and stays open.
      FileOutputStream out = new FileOutputStream(FileDescriptor.out);
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
    shutdown.noLastResort();
    if (!isScreenLeft) {
      leaveAtOnce();
    }
    try {
      terminal.setAttributes(before);
      terminal.close();
    } catch (IllegalStateException e) {
      // Closed by the library on the way out; it has put the modes back itself.
      return;
    }
  }
}
