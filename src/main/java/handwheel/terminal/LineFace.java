package handwheel.terminal;

import handwheel.screen.LineDesk;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintStream;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;
import org.jline.reader.EndOfFileException;
import org.jline.reader.LineReader;
import org.jline.reader.LineReaderBuilder;
import org.jline.reader.UserInterruptException;
import org.jline.terminal.Terminal;
import org.jspecify.annotations.Nullable;

/**
 * The line mode: text is only ever appended. At a terminal time passes while lines are typed; from
 * a pipe the lines themselves say how time passes.
 */
public final class LineFace {
  private static final double TICKS_PER_NS = 20e-9;
  private static final long POLL_MS = 50;

  /** Stands for the end of the lines; nobody can type it. */
  private static final String END = "\u0004";

  private LineFace() {}

  /**
   * Runs a drill from a pipe.
   *
   * @param desk the face
   * @param in the lines
   * @param out where the text goes
   * @throws IOException if the lines cannot be read
   */
  public static void piped(LineDesk desk, BufferedReader in, PrintStream out) throws IOException {
    desk.take("", out::println);
    for (String line = in.readLine(); line != null && !desk.isOver(); line = in.readLine()) {
      desk.take(line, out::println);
    }
    desk.finish(out::println);
  }

  /**
   * Runs a drill at a terminal.
   *
   * @param desk the face
   * @param clockNs a clock that only goes forward, ns
   * @param pace how much faster than real time
   * @throws IOException if the terminal fails
   */
  public static void typed(LineDesk desk, LongSupplier clockNs, double pace) throws IOException {
    try (Terminal terminal = Tty.open()) {
      LineReader reader = LineReaderBuilder.builder().terminal(terminal).build();
      BlockingQueue<String> lines = new LinkedBlockingQueue<>();
      Thread typing = new Thread(() -> read(reader, lines), "lines");
      typing.setDaemon(true);
      typing.start();
      loop(desk, lines, reader::printAbove, clockNs, pace);
      // Nobody reads lines any more, so there is no line to print above.
      desk.end(line -> terminal.writer().println(line));
      terminal.flush();
    }
  }

  private static void read(LineReader reader, BlockingQueue<String> lines) {
    try {
      while (true) {
        lines.add(reader.readLine("> "));
      }
    } catch (EndOfFileException | UserInterruptException | IllegalStateException e) {
      lines.add(END);
    }
  }

  private static void loop(
      LineDesk desk,
      BlockingQueue<String> lines,
      LineDesk.Out out,
      LongSupplier clockNs,
      double pace) {
    desk.begin(out);
    long lastNs = clockNs.getAsLong();
    double owed = 0;
    while (!desk.isOver()) {
      String line = next(lines);
      if (END.equals(line)) {
        return;
      }
      if (line != null) {
        desk.typed(line, out);
      }
      long nowNs = clockNs.getAsLong();
      owed += (nowNs - lastNs) * TICKS_PER_NS * pace;
      lastNs = nowNs;
      desk.pass((long) owed, out);
      owed -= (long) owed;
    }
  }

  private static @Nullable String next(BlockingQueue<String> lines) {
    try {
      return lines.poll(POLL_MS, TimeUnit.MILLISECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return END;
    }
  }
}
