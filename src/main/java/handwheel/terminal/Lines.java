package handwheel.terminal;

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
