package handwheel.reader;

import java.util.List;

/**
 * One key of a mapping, as the language knows it.
 *
 * @param name the key
 * @param form what its value looks like
 * @param isRequired whether it must be there
 * @param meaning what it says, one clause
 * @param words the valid words of a {@link Form#WORD}
 * @param of the mappings that may stand behind a {@link Form#MAPPING}, {@link Form#LIST} or {@link
 *     Form#NAMED}; none where the names stand for plain values
 */
record Key(
    String name,
    Form form,
    boolean isRequired,
    String meaning,
    List<String> words,
    List<Shape> of) {
  Key {
    words = List.copyOf(words);
    of = List.copyOf(of);
  }

  static Key must(String name, Form form, String meaning) {
    return new Key(name, form, true, meaning, List.of(), List.of());
  }

  static Key may(String name, Form form, String meaning) {
    return new Key(name, form, false, meaning, List.of(), List.of());
  }

  /** Returns this key for one of these words. */
  Key with(List<String> valid) {
    return new Key(name, form, isRequired, meaning, valid, of);
  }

  /** Returns this key for mappings of a shape. */
  Key with(Shape shape) {
    return new Key(name, form, isRequired, meaning, words, List.of(shape));
  }

  /** Returns this key for mappings of any of these shapes. */
  Key withShapes(List<Shape> any) {
    return new Key(name, form, isRequired, meaning, words, any);
  }

  /** Returns this key for mappings of one of several shapes. */
  Key with(OneShapeOf shapes) {
    return new Key(name, form, isRequired, meaning, words, List.copyOf(shapes.byKey().values()));
  }
}
