package handwheel.logbook;

import com.google.gson.Strictness;
import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.io.StringWriter;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/** Writes one object's keys in the order of the calls, without blanks. */
final class FieldWriter {
  private static final int REPLACEMENT = 0xFFFD;

  private final StringWriter text = new StringWriter();
  private final JsonWriter out = new JsonWriter(text);

  FieldWriter() {
    out.setStrictness(Strictness.STRICT);
  }

  FieldWriter begin() throws IOException {
    out.beginObject();
    return this;
  }

  String end() throws IOException {
    out.endObject();
    return withoutLoneSurrogates(text.toString());
  }

  FieldWriter text(String key, String value) throws IOException {
    out.name(key).value(value);
    return this;
  }

  FieldWriter number(String key, long value) throws IOException {
    out.name(key).value(value);
    return this;
  }

  FieldWriter flag(String key, boolean value) throws IOException {
    out.name(key).value(value);
    return this;
  }

  FieldWriter numbers(String key, SortedMap<String, Long> values) throws IOException {
    out.name(key).beginObject();
    for (Map.Entry<String, Long> e : natural(values).entrySet()) {
      out.name(e.getKey()).value(e.getValue());
    }
    out.endObject();
    return this;
  }

  <T> FieldWriter list(String key, List<T> values, LineForm.Put<T> put) throws IOException {
    out.name(key).beginArray();
    for (T value : values) {
      out.beginObject();
      put.into(this, value);
      out.endObject();
    }
    out.endArray();
    return this;
  }

  /** A map sorted by an order of its own would give other bytes for the same figures. */
  private static SortedMap<String, Long> natural(SortedMap<String, Long> values) {
    if (values.comparator() == null) {
      return values;
    }
    TreeMap<String, Long> sorted = new TreeMap<>();
    sorted.putAll(values);
    return sorted;
  }

  /**
   * Half of a surrogate pair has no UTF-8 form, and no text that others shall read may hold one
   * (RFC 7493, section 2.1). What Java would write as a question mark becomes U+FFFD.
   */
  private static String withoutLoneSurrogates(String json) {
    if (json.codePoints().noneMatch(FieldWriter::isSurrogate)) {
      return json;
    }
    StringBuilder mended = new StringBuilder();
    json.codePoints().map(c -> isSurrogate(c) ? REPLACEMENT : c).forEach(mended::appendCodePoint);
    return mended.toString();
  }

  private static boolean isSurrogate(int codePoint) {
    return codePoint >= Character.MIN_SURROGATE && codePoint <= Character.MAX_SURROGATE;
  }
}
