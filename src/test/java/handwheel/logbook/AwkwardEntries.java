package handwheel.logbook;

import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Builds entries of every kind from their components, full of one text and extreme figures. */
final class AwkwardEntries {
  /** Texts that a line form may trip over. */
  static final List<String> TEXTS =
      List.of(
          "",
          " ",
          "\"",
          "\\",
          "/",
          "\\u0041",
          "},\"h\":\"",
          "\b\f\n\r\t",
          "\u0000\u0001\u001f\u007f\u0080\u009f",
          "\u2028\u2029",
          "\uFEFF\uFFFD\uFFFF",
          "\uD834\uDD1E \uD83D\uDD25 \uD83D\uDC68\u200D\uD83D\uDE92",
          "e\u0301 \u00e9 \u5b57 \u05d0 \u202e",
          "<script>&'=</script>");

  private AwkwardEntries() {}

  static Stream<Class<?>> kinds() {
    return Arrays.stream(Entry.class.getPermittedSubclasses());
  }

  static Entry of(Class<?> kind, String text, long figure) {
    return (Entry) build(kind, text, figure);
  }

  private static Object build(Class<?> kind, String text, long figure) {
    RecordComponent[] parts = kind.getRecordComponents();
    Class<?>[] types = Arrays.stream(parts).map(RecordComponent::getType).toArray(Class<?>[]::new);
    Object[] values = Arrays.stream(types).map(t -> value(t, text, figure)).toArray();
    try {
      return kind.getDeclaredConstructor(types).newInstance(values);
    } catch (ReflectiveOperationException e) {
      throw new LinkageError(e.getMessage(), e);
    }
  }

  private static Object value(Class<?> type, String text, long figure) {
    if (type == String.class) {
      return text;
    }
    if (type == long.class) {
      return figure;
    }
    if (type == int.class) {
      return (int) Math.max(Integer.MIN_VALUE, Math.min(Integer.MAX_VALUE, figure));
    }
    if (type == boolean.class) {
      return figure > 0;
    }
    return type == SortedMap.class ? gauges(text, figure) : losses(text, figure);
  }

  private static SortedMap<String, Long> gauges(String text, long figure) {
    TreeMap<String, Long> map = new TreeMap<>();
    map.put(text, figure);
    map.put(text + "b", -1L);
    map.put(text + "B", 0L);
    return map;
  }

  private static List<Object> losses(String text, long figure) {
    Object loss = build(Entry.Loss.class, text, figure);
    return List.of(loss, loss);
  }
}
