package handwheel.reader;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The language as JSON Schema (draft 2020-12), for editors. It is printed from the shapes the
 * readers read by; there is no second description. An editor that knows it offers keys and words
 * and marks what cannot be; what a script means is said by {@code check} alone.
 */
public final class LanguageSchema {
  private static final String DRAFT = "https://json-schema.org/draft/2020-12/schema";
  private static final String DESCRIPTION = "description";
  private static final String CONDITION = "condition";

  private static final Map<String, Shape> FILES = files();

  private final Map<String, Object> defs = new TreeMap<>();
  private final Map<String, Shape> met = new TreeMap<>();

  private LanguageSchema() {}

  private static Map<String, Shape> files() {
    Map<String, Shape> files = new LinkedHashMap<>();
    files.put("script", ScriptReader.SHAPE);
    files.put("ship", ShipReader.SHAPE);
    files.put("condition", ConditionFile.SHAPE);
    files.put("plant", NumbersFile.SHAPE);
    return files;
  }

  /**
   * Returns the kinds of files the language has.
   *
   * @return words, the script first
   */
  public static List<String> kinds() {
    return List.copyOf(FILES.keySet());
  }

  /**
   * Prints the schema of a kind of file.
   *
   * @param kind one of {@link #kinds}
   * @return JSON, ASCII only, with a line end
   */
  public static String of(String kind) {
    Shape root = FILES.get(kind);
    if (root == null) {
      throw new IllegalArgumentException("no kind of file is called " + kind);
    }
    return JsonText.of(new LanguageSchema().file(kind, root));
  }

  private Map<String, Object> file(String kind, Shape root) {
    Map<String, Object> schema = new LinkedHashMap<>();
    schema.put("$schema", DRAFT);
    schema.put("title", "Handwheel " + kind);
    schema.putAll(mapping(root));
    schema.put("$defs", defs);
    return schema;
  }

  private Map<String, Object> mapping(Shape shape) {
    Map<String, Object> properties = new LinkedHashMap<>();
    shape.keys().forEach(k -> properties.put(k.name(), described(k)));
    Map<String, Object> schema = new LinkedHashMap<>();
    schema.put(DESCRIPTION, shape.what());
    schema.put("type", "object");
    schema.put("properties", properties);
    schema.put("required", shape.keys().stream().filter(Key::isRequired).map(Key::name).toList());
    schema.put("additionalProperties", false);
    return schema;
  }

  private Map<String, Object> described(Key key) {
    Map<String, Object> schema = new LinkedHashMap<>();
    schema.put(DESCRIPTION, key.meaning());
    schema.putAll(value(key));
    return schema;
  }

  private Map<String, Object> value(Key key) {
    return switch (key.form()) {
      case MAPPING -> anyOf(key.of());
      case LIST -> list(anyOf(key.of()));
      case NAMED -> named(key);
      case CONDITION -> condition();
      case CONDITIONS -> list(condition());
      case HEADER,
          ID,
          IDS,
          DOTTED_ID,
          TEXT,
          WORD,
          TRUE_FALSE,
          WHOLE,
          NUMBER,
          QUANTITY,
          TIME,
          AMOUNT,
          POSITION,
          RANGE,
          POINTS,
          WINDOW,
          RULE,
          ORDER,
          UPON,
          FILE ->
          FormSchema.of(key);
    };
  }

  private static Map<String, Object> list(Map<String, Object> item) {
    Map<String, Object> list = new LinkedHashMap<>();
    list.put("type", "array");
    list.put("items", item);
    return list;
  }

  private Map<String, Object> named(Key key) {
    Map<String, Object> named = new LinkedHashMap<>();
    named.put("type", "object");
    named.put("additionalProperties", key.of().isEmpty() ? true : anyOf(key.of()));
    return named;
  }

  private Map<String, Object> condition() {
    if (!defs.containsKey(CONDITION)) {
      defs.put(CONDITION, true);
      defs.put(CONDITION, anyOf(List.copyOf(ConditionReader.SHAPES.byKey().values())));
    }
    return ref(CONDITION);
  }

  private Map<String, Object> anyOf(List<Shape> shapes) {
    List<Object> refs = new ArrayList<>();
    shapes.forEach(s -> refs.add(ref(name(s))));
    return shapes.size() == 1 ? ref(name(shapes.get(0))) : Collections.singletonMap("anyOf", refs);
  }

  private static Map<String, Object> ref(String name) {
    return Collections.singletonMap("$ref", "#/$defs/" + name);
  }

  /** Returns the name of a shape's definition, made from its words when it is met first. */
  private String name(Shape shape) {
    String words = shape.what().replaceAll("^(an?|the) ", "");
    String slug = words.replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
    String name = slug;
    for (int i = 2; met.containsKey(name) && !shape.equals(met.get(name)); i++) {
      name = slug + "-" + i;
    }
    if (met.put(name, shape) == null) {
      defs.put(name, mapping(shape));
    }
    return name;
  }
}
