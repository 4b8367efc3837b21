package handwheel.logbook;

import com.google.gson.Strictness;
import com.google.gson.stream.JsonReader;
import com.google.gson.stream.JsonToken;
import com.google.gson.stream.MalformedJsonException;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Pattern;

/** Reads one object's keys in the order of the calls and accepts no other order. */
final class FieldReader {
  private static final Pattern WHOLE_NUMBER = Pattern.compile("0|-?[1-9][0-9]*");

  private final CharFeed feed;
  private final JsonReader in;
  private final List<String> seen = new ArrayList<>();

  FieldReader(CharFeed feed) {
    this(feed, new JsonReader(feed));
    in.setStrictness(Strictness.STRICT);
  }

  private FieldReader(CharFeed feed, JsonReader in) {
    this.feed = feed;
    this.in = in;
  }

  void begin() throws IOException {
    if (in.peek() != JsonToken.BEGIN_OBJECT) {
      throw here("an object in braces is expected");
    }
    in.beginObject();
  }

  void end() throws IOException {
    if (in.peek() == JsonToken.NAME) {
      throw wrongKey(in.nextName(), "the end of the object");
    }
    in.endObject();
  }

  void endOfLine() throws IOException {
    try {
      if (in.peek() == JsonToken.END_DOCUMENT) {
        return;
      }
    } catch (MalformedJsonException e) {
      // STRICT refuses a second value by this exception; the message below says it better.
    }
    throw here("there is text after the object");
  }

  String text(String key) throws IOException {
    value(key, JsonToken.STRING, "text in quotes");
    return in.nextString();
  }

  long number(String key) throws IOException {
    int column = value(key, JsonToken.NUMBER, "a whole number");
    return wholeNumber(key, column);
  }

  int count(String key) throws IOException {
    int column = value(key, JsonToken.NUMBER, "a whole number");
    long n = wholeNumber(key, column);
    if (n != (int) n) {
      throw new NotUnderstood(column, "`" + key + "` is " + n + ", which is out of range");
    }
    return (int) n;
  }

  boolean flag(String key) throws IOException {
    value(key, JsonToken.BOOLEAN, "true or false");
    return in.nextBoolean();
  }

  SortedMap<String, Long> numbers(String key) throws IOException {
    value(key, JsonToken.BEGIN_OBJECT, "an object of whole numbers");
    TreeMap<String, Long> values = new TreeMap<>();
    FieldReader inner = new FieldReader(feed, in);
    inner.begin();
    while (in.peek() == JsonToken.NAME) {
      inner.putNumber(values);
    }
    inner.end();
    return values;
  }

  private void putNumber(SortedMap<String, Long> values) throws IOException {
    String name = in.nextName();
    if (values.containsKey(name)) {
      throw twice(name);
    }
    if (!values.isEmpty() && name.compareTo(values.lastKey()) < 0) {
      throw atKey(name, "key `" + name + "` belongs before `" + values.lastKey() + "`");
    }
    int column = typed(name, JsonToken.NUMBER, "a whole number");
    values.put(name, wholeNumber(name, column));
  }

  <T> List<T> list(String key, LineForm.Take<T> take) throws IOException {
    value(key, JsonToken.BEGIN_ARRAY, "a list in brackets");
    List<T> values = new ArrayList<>();
    in.beginArray();
    while (in.peek() != JsonToken.END_ARRAY) {
      FieldReader inner = new FieldReader(feed, in);
      inner.begin();
      values.add(take.from(inner));
      inner.end();
    }
    in.endArray();
    return values;
  }

  /** Returns a trouble at the character the reader has come to. */
  NotUnderstood here(String message) {
    return new NotUnderstood(Math.max(1, feed.column()), message);
  }

  private int value(String key, JsonToken type, String words) throws IOException {
    if (in.peek() != JsonToken.NAME) {
      throw here("key `" + key + "` is missing");
    }
    String found = in.nextName();
    if (!found.equals(key)) {
      throw wrongKey(found, "`" + key + "`");
    }
    seen.add(key);
    return typed(key, type, words);
  }

  /** Returns the value's column: behind the key's closing quote and the colon. */
  private int typed(String key, JsonToken type, String words) throws IOException {
    int column = feed.column() + 2;
    if (in.peek() != type) {
      throw new NotUnderstood(column, "`" + key + "` must be " + words);
    }
    return column;
  }

  private long wholeNumber(String key, int column) throws IOException {
    String digits = in.nextString();
    if (!WHOLE_NUMBER.matcher(digits).matches()) {
      throw new NotUnderstood(
          column, "`" + key + "` is " + digits + ", but only plain whole numbers are used");
    }
    try {
      return Long.parseLong(digits);
    } catch (NumberFormatException e) {
      throw new NotUnderstood(column, "`" + key + "` is " + digits + ", which is out of range");
    }
  }

  private NotUnderstood wrongKey(String found, String expected) {
    return seen.contains(found)
        ? twice(found)
        : atKey(found, "found key `" + found + "` where " + expected + " is expected");
  }

  private NotUnderstood twice(String key) {
    return atKey(key, "key `" + key + "` stands twice");
  }

  /** The reader stands on the key's closing quote. */
  private NotUnderstood atKey(String key, String message) {
    return new NotUnderstood(Math.max(1, feed.column() - key.length() - 1), message);
  }
}
