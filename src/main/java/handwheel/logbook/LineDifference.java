package handwheel.logbook;

import com.google.gson.stream.JsonReader;
import com.google.gson.stream.JsonToken;
import java.io.IOException;
import java.io.StringReader;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * The first field in which two lines differ, so that nobody has to compare a thousand gauges by
 * eye.
 *
 * @param field such as {@code say} or {@code gauge.drum-pressure} or {@code lost.0.points}
 * @param was its value in the first line; {@code nothing} if it is not there
 * @param is its value in the second line; {@code nothing} if it is not there
 */
public record LineDifference(String field, String was, String is) {
  private static final String NOTHING = "nothing";
  private static final String HASH = "h";

  /**
   * Compares two lines of a record.
   *
   * @param was one line
   * @param is another
   * @return the first field that differs in the order of the first line, {@code h} left out; empty
   *     if no field differs or one of them is not a line
   */
  public static Optional<LineDifference> of(String was, String is) {
    try {
      Map<String, String> before = fields(was);
      Map<String, String> after = fields(is);
      for (Map.Entry<String, String> e : before.entrySet()) {
        String other = after.getOrDefault(e.getKey(), NOTHING);
        if (!e.getKey().equals(HASH) && !e.getValue().equals(other)) {
          return Optional.of(new LineDifference(e.getKey(), e.getValue(), other));
        }
      }
      return after.keySet().stream()
          .filter(k -> !before.containsKey(k))
          .findFirst()
          .map(k -> new LineDifference(k, NOTHING, after.getOrDefault(k, NOTHING)));
    } catch (IOException | IllegalStateException e) {
      return Optional.empty();
    }
  }

  private static Map<String, String> fields(String line) throws IOException {
    Map<String, String> fields = new LinkedHashMap<>();
    try (JsonReader in = new JsonReader(new StringReader(line))) {
      read(in, "", fields);
    }
    return fields;
  }

  private static void read(JsonReader in, String path, Map<String, String> into)
      throws IOException {
    JsonToken token = in.peek();
    if (token == JsonToken.BEGIN_OBJECT) {
      in.beginObject();
      while (in.hasNext()) {
        read(in, joined(path, in.nextName()), into);
      }
      in.endObject();
    } else if (token == JsonToken.BEGIN_ARRAY) {
      in.beginArray();
      for (int i = 0; in.hasNext(); i++) {
        read(in, joined(path, String.valueOf(i)), into);
      }
      in.endArray();
    } else {
      into.put(path, token == JsonToken.BOOLEAN ? flag(in.nextBoolean()) : in.nextString());
    }
  }

  private static String flag(boolean value) {
    return value ? "true" : "false";
  }

  private static String joined(String path, String key) {
    return path.isEmpty() ? key : path + "." + key;
  }
}
