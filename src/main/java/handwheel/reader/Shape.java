package handwheel.reader;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The keys of one kind of mapping. Each reader states its shapes once and reads by them, so that
 * what is documented is what is read.
 *
 * @param what the mapping for people, with its article, such as {@code a step}
 * @param keys its keys in the order in which people write them
 */
record Shape(String what, List<Key> keys) {
  Shape {
    keys = List.copyOf(keys);
  }

  static Shape of(String what, Key... keys) {
    return new Shape(what, List.of(keys));
  }

  /** Returns this shape with more keys. */
  Shape plus(List<Key> more) {
    List<Key> all = new ArrayList<>(keys);
    all.addAll(more);
    return new Shape(what, all);
  }

  List<String> names() {
    return keys.stream().map(Key::name).toList();
  }

  Optional<Key> key(String name) {
    return keys.stream().filter(k -> k.name().equals(name)).findFirst();
  }
}
