package handwheel.debrief;

import java.util.ArrayList;
import java.util.List;

/**
 * Where two lines of a record first differ: the key, and what each line says there. Lines are in
 * the one form that is used, so keys stand in the same order.
 */
final class FieldDifference {
  private static final int LONGEST = 60;

  private FieldDifference() {}

  /** Says it for people; {@code line} has both lines in JSON. */
  static String text(String was, String is) {
    List<String> before = fields(was);
    List<String> after = fields(is);
    for (int i = 0; i < before.size(); i++) {
      String other = i < after.size() ? after.get(i) : "nothing";
      if (!before.get(i).equals(other)) {
        return of(before.get(i), other);
      }
    }
    return "the simulation has more fields";
  }

  private static String of(String was, String is) {
    int colon = was.indexOf(':');
    String key = was.substring(0, Math.max(0, colon));
    boolean isSameKey = is.startsWith(key + ":");
    String wasValue = was.substring(colon + 1);
    String isValue = isSameKey ? is.substring(colon + 1) : is;
    if (isSameKey && wasValue.startsWith("{") && isValue.startsWith("{")) {
      return "in " + bare(key) + " " + text(wasValue, isValue);
    }
    return bare(key) + ": the record says " + cut(wasValue) + " and the simulation " + cut(isValue);
  }

  private static String bare(String key) {
    return "`" + key.replace("\"", "") + "`";
  }

  private static String cut(String value) {
    return value.length() <= LONGEST ? value : value.substring(0, LONGEST) + "...";
  }

  /**
   * The fields of an object, each as {@code "key":value}; commas inside texts and lists are not
   * ends.
   */
  private static List<String> fields(String object) {
    List<String> fields = new ArrayList<>();
    int depth = 0;
    boolean isText = false;
    int start = 1;
    for (int i = 1; i < object.length(); i++) {
      char c = object.charAt(i);
      if (isText) {
        i += c == '\\' ? 1 : 0;
        isText = c != '"';
      } else if (c == '"') {
        isText = true;
      } else if ((c == ',' || c == '}') && depth == 0) {
        fields.add(object.substring(start, i));
        start = i + 1;
      } else {
        depth += depthOf(c);
      }
    }
    return fields;
  }

  private static int depthOf(char c) {
    return switch (c) {
      case '{', '[' -> 1;
      case '}', ']' -> -1;
      default -> 0;
    };
  }
}
