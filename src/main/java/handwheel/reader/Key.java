package handwheel.reader;

import java.util.List;
import java.util.Optional;

/**
 * One key of a mapping, as the language knows it.
 *
 * @param name the key
 * @param form what its value looks like
 * @param isRequired whether it must be there
 * @param meaning what it says, one clause
 * @param words the valid words of a {@link Form#WORD}
 * @param of the mapping behind a {@link Form#MAPPING} or {@link Form#LIST}
 */
record Key(
    String name,
    Form form,
    boolean isRequired,
    String meaning,
    List<String> words,
    Optional<Shape> of) {
  Key {
    words = List.copyOf(words);
  }

  static Key must(String name, Form form, String meaning) {
    return new Key(name, form, true, meaning, List.of(), Optional.empty());
  }

  static Key may(String name, Form form, String meaning) {
    return new Key(name, form, false, meaning, List.of(), Optional.empty());
  }

  /** Returns this key for one of these words. */
  Key with(List<String> valid) {
    return new Key(name, form, isRequired, meaning, valid, of);
  }

  /** Returns this key for mappings of a shape. */
  Key with(Shape shape) {
    return new Key(name, form, isRequired, meaning, words, Optional.of(shape));
  }
}
