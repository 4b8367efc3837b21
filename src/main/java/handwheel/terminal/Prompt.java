package handwheel.terminal;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jline.keymap.KeyMap;
import org.jline.reader.Candidate;
import org.jline.reader.EndOfFileException;
import org.jline.reader.LineReader;
import org.jline.reader.LineReaderBuilder;
import org.jline.reader.Reference;
import org.jline.reader.UserInterruptException;
import org.jline.reader.impl.DefaultParser;
import org.jline.terminal.Attributes;
import org.jline.terminal.Terminal;

/**
 * The line a trainee types on at a real terminal: text is printed above it while he types. Two
 * exclamation marks are a drill stop here and never a line from before.
 */
final class Prompt implements AutoCloseable {
  private static final String TEXT = "DRILL> ";
  private static final long END_MS = 500;

  private final Terminal terminal;
  private final Attributes before;
  private final LineReader reader;
  private final Lines lines = new Lines();
  private final Thread typing;
  private volatile boolean isClosing;

  Prompt(Terminal terminal, Function<String, List<String>> offered) {
    this.terminal = terminal;
    this.before = terminal.getAttributes();
    DefaultParser parser = new DefaultParser();
    parser.setEscapeChars(new char[0]);
    parser.setQuoteChars(new char[0]);
    this.reader =
        LineReaderBuilder.builder()
            .terminal(terminal)
            .parser(parser)
            .completer(
                (r, line, candidates) ->
                    offered
                        .apply(line.line().substring(0, line.cursor()))
                        .forEach(word -> candidates.add(new Candidate(word))))
            .option(LineReader.Option.DISABLE_EVENT_EXPANSION, true)
            .option(LineReader.Option.BRACKETED_PASTE, false)
            .build();
    reader.getWidgets().put("suspend", this::suspend);
    Optional.ofNullable(reader.getKeyMaps().get(LineReader.MAIN))
        .ifPresent(keys -> keys.bind(new Reference("suspend"), KeyMap.ctrl('Z')));
    this.typing = Lines.inBackground(this::read);
  }

  private void read() {
    try {
      while (!isClosing) {
        read(TEXT);
      }
    } catch (IllegalStateException e) {
      lines.end();
    }
  }

  /** The end of input is a second interrupt if the terminal is gone, and a slip if it is not. */
  private void read(String prompt) {
    try {
      lines.text(reader.readLine(prompt));
    } catch (EndOfFileException | UserInterruptException e) {
      lines.interrupt();
    }
  }

  private boolean suspend() {
    Attributes raw = terminal.getAttributes();
    terminal.setAttributes(before);
    try {
      Tty.stopProcess();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    terminal.setAttributes(raw);
    reader.callWidget(LineReader.REDRAW_LINE);
    return true;
  }

  Lines lines() {
    return lines;
  }

  void print(String text) {
    reader.printAbove(text);
  }

  /** Returns whether something stands on the line. */
  boolean isTyping() {
    return reader.getBuffer().length() > 0;
  }

  @Override
  public void close() throws IOException {
    isClosing = true;
    typing.interrupt();
    try {
      typing.join(END_MS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    terminal.close();
  }
}
