package handwheel.terminal;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.terminal.ansi.ANSITerminal;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.jline.terminal.Size;
import org.jline.terminal.Terminal;

/**
 * Lets Lanterna draw on a terminal that JLine owns. Keys do not come this way. Text is written as
 * text, so that no byte of a character is lost or added.
 */
final class DrawingTerminal extends ANSITerminal {
  private static final TerminalSize USUAL = new TerminalSize(80, 24);

  private final Terminal terminal;

  DrawingTerminal(Terminal terminal) {
    super(InputStream.nullInputStream(), new ToWriter(terminal.writer()), StandardCharsets.UTF_8);
    this.terminal = terminal;
  }

  @Override
  protected TerminalSize findTerminalSize() {
    Size size = terminal.getSize();
    return size.getColumns() < 1 || size.getRows() < 1
        ? USUAL
        : new TerminalSize(size.getColumns(), size.getRows());
  }

  /** Tells Lanterna that the window may have another size. */
  void resized() {
    try {
      getTerminalSize();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public void putString(String string) throws IOException {
    terminal.writer().write(string);
  }

  @Override
  public void putCharacter(char c) throws IOException {
    terminal.writer().write(c);
  }

  @Override
  public void flush() throws IOException {
    terminal.writer().flush();
  }

  /** Lanterna's control sequences are ASCII: each byte is a character. */
  private static final class ToWriter extends OutputStream {
    private final PrintWriter writer;

    ToWriter(PrintWriter writer) {
      this.writer = writer;
    }

    @Override
    public void write(int b) {
      writer.write(b & 0x7f);
    }

    @Override
    public void flush() {
      writer.flush();
    }
  }
}
