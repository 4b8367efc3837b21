package handwheel.logbook;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * Writes and reads one family of lines, without {@code h}. There is exactly one text for a value:
 * what is read is written again, and a text that differs from it by a blank or an escape is not
 * understood.
 */
final class LineCodec<T> {
  private final Map<String, LineForm<? extends T>> forms = new LinkedHashMap<>();
  private final Function<T, String> kindOf;

  LineCodec(List<LineForm<? extends T>> forms, Function<T, String> kindOf) {
    forms.forEach(f -> this.forms.put(f.kind(), f));
    this.kindOf = kindOf;
  }

  String write(T value) {
    LineForm<? extends T> form = forms.get(kindOf.apply(value));
    if (form == null) {
      throw new IllegalArgumentException("no form for " + value);
    }
    try {
      FieldWriter out = new FieldWriter().begin();
      form.write(out, value);
      return out.end();
    } catch (IOException e) {
      // Text in memory has no way to fail.
      throw new UncheckedIOException(e);
    }
  }

  LineRead<T> read(String line) {
    try {
      return asWritten(line, parse(CharFeed.whole(line)));
    } catch (IOException e) {
      return explain(line);
    }
  }

  private T parse(CharFeed feed) throws IOException {
    FieldReader in = new FieldReader(feed);
    in.begin();
    String kind = in.text("k");
    LineForm<? extends T> form = forms.get(kind);
    if (form == null) {
      throw in.here(
          "kind `" + kind + "` is not known here, only " + String.join(", ", forms.keySet()));
    }
    T value = form.take().from(in);
    in.end();
    in.endOfLine();
    return value;
  }

  private LineRead<T> asWritten(String line, T value) {
    String again = write(value);
    if (again.equals(line)) {
      return LineRead.of(value);
    }
    int same = 0;
    while (same < Math.min(line.length(), again.length())
        && line.charAt(same) == again.charAt(same)) {
      same++;
    }
    return LineRead.trouble(
        same + 1, "the same is written another way here; only one form of a line is used.");
  }

  /** Reads the line again one character at a time, for the column. */
  private LineRead<T> explain(String line) {
    CharFeed feed = CharFeed.single(line);
    try {
      return asWritten(line, parse(feed));
    } catch (NotUnderstood e) {
      return LineRead.trouble(e.column(), e.getMessage() + ".");
    } catch (IOException e) {
      // The JSON reader's own message speaks to its programmers.
      return feed.ranOut()
          ? LineRead.trouble(line.length() + 1, "the line ends too early.")
          : LineRead.trouble(Math.max(1, feed.column()), "this is not JSON (RFC 8259).");
    }
  }
}
