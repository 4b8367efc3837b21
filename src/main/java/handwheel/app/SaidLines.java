package handwheel.app;

import java.io.BufferedReader;
import java.io.Reader;
import java.util.concurrent.LinkedBlockingQueue;

/** Lines that one thread says and another reads, as from a terminal; it waits for the next. */
final class SaidLines extends BufferedReader {
  private final LinkedBlockingQueue<String> said = new LinkedBlockingQueue<>();

  /** No line can look like this: it has a line end in it. */
  private static final String END = "\n";

  SaidLines() {
    super(Reader.nullReader());
  }

  void say(String line) {
    said.add(line);
  }

  void end() {
    said.add(END);
  }

  @Override
  public @org.jspecify.annotations.Nullable String readLine() {
    try {
      String line = said.take();
      return line.equals(END) ? null : line;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return null;
    }
  }
}
