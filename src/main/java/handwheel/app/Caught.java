package handwheel.app;

import java.io.ByteArrayOutputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Takes what one thread prints, so that another can show it line by line. */
final class Caught extends OutputStream {
  private final ByteArrayOutputStream begun = new ByteArrayOutputStream();
  private final List<String> whole = new ArrayList<>();

  @Override
  public synchronized void write(int b) {
    if (b == '\n') {
      whole.add(begun());
      begun.reset();
    } else if (b != '\r') {
      begun.write(b);
    }
  }

  /** Returns the whole lines since it was asked last. */
  synchronized List<String> take() {
    List<String> taken = List.copyOf(whole);
    whole.clear();
    return taken;
  }

  /** Returns the line that is not at its end. */
  synchronized String begun() {
    return begun.toString(StandardCharsets.UTF_8);
  }
}
