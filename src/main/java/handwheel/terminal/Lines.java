package handwheel.terminal;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;

/** Lines that one thread reads and another waits for, with a time limit. */
final class Lines {
  private final BlockingQueue<Line> queue = new LinkedBlockingQueue<>();

  /**
   * What was read.
   *
   * @param kind a line, an interrupt, or the end of all lines
   * @param text the line; empty otherwise
   */
  record Line(Kind kind, String text) {
    boolean is(Kind wanted) {
      return kind == wanted;
    }
  }

  /** Kinds of what can be read. */
  enum Kind {
    /** A line. */
    TEXT,
    /** Control and C. */
    INTERRUPT,
    /** Nothing more will come. */
    END
  }

  void text(String line) {
    queue.add(new Line(Kind.TEXT, line));
  }

  void interrupt() {
    queue.add(new Line(Kind.INTERRUPT, ""));
  }

  void end() {
    queue.add(new Line(Kind.END, ""));
  }

  /** Reads lines from a stream until its end. */
  void readInBackground(InputStream in) {
    inBackground(() -> read(in));
  }

  private void read(InputStream in) {
    try (BufferedReader reader =
        new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      for (String line = reader.readLine(); line != null; line = reader.readLine()) {
        text(line);
      }
    } catch (IOException e) {
      // Lines that cannot be read are at their end.
    }
    end();
  }

  /** Waits for the next; empty if none came in time. */
  Optional<Line> poll(long ms) {
    try {
      return Optional.ofNullable(queue.poll(ms, TimeUnit.MILLISECONDS));
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return Optional.of(new Line(Kind.END, ""));
    }
  }

  /** Reads from another thread until it is told to stop; the thread keeps no program alive. */
  static Thread inBackground(Runnable reading) {
    Thread thread = new Thread(reading, "lines");
    thread.setDaemon(true);
    thread.start();
    return thread;
  }
}
