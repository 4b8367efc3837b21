package handwheel.screen;

import java.util.List;

/**
 * What can stand next in an order.
 *
 * @param what its kind in words, such as {@code a place}
 * @param words the valid words
 * @param isFree whether any word can stand here, as in a setting
 * @param canEnd whether the order can also end here
 */
record Slot(String what, List<String> words, boolean isFree, boolean canEnd) {
  static final Slot END = new Slot("the end of the order", List.of(), false, true);

  Slot {
    words = List.copyOf(words);
  }

  static Slot of(String what, List<String> words) {
    return new Slot(what, words, false, false);
  }

  /** Returns this if so many words stand before it, else the end. */
  static Slot last(List<String> before, int words, Slot slot) {
    return before.size() == words ? slot : END;
  }
}
