package handwheel.reader;

import handwheel.units.Dimension;
import handwheel.units.Unit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * What a single value looks like to an editor. An editor resolves a plain {@code 15} to a number
 * and {@code true} to a boolean (YAML 1.2.2 section 10.3); this program reads the text, so both are
 * valid.
 */
final class FormSchema {
  private static final String TYPE = "type";
  private static final String STRING = "string";
  private static final String PATTERN = "pattern";
  private static final List<String> PLAIN = List.of(STRING, "number", "boolean");

  private FormSchema() {}

  /** Returns the schema of a value that is neither a mapping nor a list of them. */
  static Map<String, Object> of(Key key) {
    return switch (key.form()) {
      case HEADER -> Collections.singletonMap("const", key.words().get(0));
      case ID -> id();
      case IDS -> oneOrMore();
      case DOTTED_ID, ORDER, UPON, FILE, RANGE -> Collections.singletonMap(TYPE, STRING);
      case TEXT -> text();
      case WORD -> words(key.words());
      case TRUE_FALSE -> Collections.singletonMap("enum", List.of(true, false, "true", "false"));
      case WHOLE -> plainOr(Scalars.WHOLE.pattern(), "integer");
      case NUMBER -> plainOr(Scalars.NUMBER.pattern(), "number");
      case QUANTITY -> plainOr(quantity(), "number");
      case TIME -> pattern(time());
      case AMOUNT -> plainOr("(?:" + quantity() + ")|vary .+", "number");
      case POSITION -> Collections.singletonMap(TYPE, PLAIN);
      case POINTS -> pattern("[0-9]+ points");
      case WINDOW -> pattern(WindowReader.TEXT.pattern());
      case RULE -> pattern(GradeReader.RULE.pattern());
      case MAPPING, LIST, NAMED, CONDITION, CONDITIONS ->
          throw new IllegalArgumentException(key.name() + " is no single value");
    };
  }

  static Map<String, Object> id() {
    Map<String, Object> id = new LinkedHashMap<>(pattern(Scalars.ID.pattern()));
    id.put("maxLength", Limits.ID_CHARS);
    return id;
  }

  private static Map<String, Object> oneOrMore() {
    Map<String, Object> list = new LinkedHashMap<>();
    list.put(TYPE, "array");
    list.put("items", id());
    list.put("minItems", 1);
    return Collections.singletonMap("anyOf", List.of(id(), list));
  }

  private static Map<String, Object> text() {
    Map<String, Object> text = new LinkedHashMap<>();
    text.put(TYPE, PLAIN);
    text.put("minLength", 1);
    return text;
  }

  /** An editor takes the word {@code 1} for a number. */
  private static Map<String, Object> words(List<String> words) {
    if (words.isEmpty()) {
      return Collections.singletonMap(TYPE, PLAIN);
    }
    List<Object> valid = new ArrayList<>(words);
    words.stream()
        .filter(w -> Scalars.WHOLE.matcher(w).matches())
        .forEach(w -> valid.add(Integer.valueOf(w)));
    return Collections.singletonMap("enum", valid);
  }

  private static Map<String, Object> plainOr(String pattern, String type) {
    Map<String, Object> value = new LinkedHashMap<>();
    value.put(TYPE, List.of(type, STRING));
    value.put(PATTERN, whole(pattern));
    return value;
  }

  private static Map<String, Object> pattern(String pattern) {
    Map<String, Object> value = new LinkedHashMap<>();
    value.put(TYPE, STRING);
    value.put(PATTERN, whole(pattern));
    return value;
  }

  private static String whole(String pattern) {
    return "^(?:" + pattern + ")$";
  }

  private static String quantity() {
    return Measures.FIGURE + "(?: ?\\S.*)?";
  }

  private static String time() {
    String units =
        Unit.of(Dimension.TIME).stream()
            .map(Unit::symbol)
            .map(Pattern::quote)
            .map(q -> q.replace("\\Q", "").replace("\\E", ""))
            .collect(Collectors.joining("|"));
    return Measures.FIGURE + " ?(?:" + units + ")";
  }
}
