package handwheel.reader;

import java.util.Iterator;
import java.util.List;
import java.util.Map;

/** Prints maps, lists, texts, numbers and booleans as JSON (RFC 8259), two blanks a level. */
final class JsonText {
  private static final int FIRST_PRINTABLE = 0x20;
  private static final int LAST_ASCII = 0x7e;

  private final StringBuilder out = new StringBuilder();

  private JsonText() {}

  /** Returns a value as JSON, with a line end behind it. */
  static String of(Object value) {
    JsonText text = new JsonText();
    text.value(value, "");
    return text.out.append('\n').toString();
  }

  private void value(Object value, String indent) {
    if (value instanceof Map<?, ?> map) {
      map(map, indent);
    } else if (value instanceof List<?> list) {
      list(list, indent);
    } else if (value instanceof String text) {
      string(text);
    } else {
      out.append(value);
    }
  }

  private void map(Map<?, ?> map, String indent) {
    String inner = indent + "  ";
    out.append('{');
    for (Iterator<? extends Map.Entry<?, ?>> i = map.entrySet().iterator(); i.hasNext(); ) {
      Map.Entry<?, ?> entry = i.next();
      out.append('\n').append(inner);
      string(entry.getKey().toString());
      out.append(": ");
      value(entry.getValue(), inner);
      out.append(i.hasNext() ? "," : "\n" + indent);
    }
    out.append('}');
  }

  private void list(List<?> list, String indent) {
    out.append('[');
    for (int i = 0; i < list.size(); i++) {
      out.append(i == 0 ? "" : ", ");
      value(list.get(i), indent);
    }
    out.append(']');
  }

  private void string(String text) {
    out.append('"');
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '"' || c == '\\') {
        out.append('\\').append(c);
      } else if (c < FIRST_PRINTABLE || c > LAST_ASCII) {
        String hex = Integer.toHexString(c);
        out.append("\\u").append("0".repeat(4 - hex.length())).append(hex);
      } else {
        out.append(c);
      }
    }
    out.append('"');
  }
}
