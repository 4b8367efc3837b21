package handwheel.screen;

import handwheel.diagnostics.NearestWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Every way to read a typed line whose words may be cut short: word by word, each cut to any
 * beginning of itself or of its parts between hyphens. A word that several valid ones begin with
 * stays open until a later word decides.
 *
 * @param grammar which words can follow
 * @param all each way, as full words
 */
record Readings(OrderGrammar grammar, List<List<String>> all) {
  /** More ways than this are not followed; somebody who types so little is asked for more. */
  private static final int MOST = 500;

  /** A shorter word is near too many others. */
  private static final int LEAST_TO_MEND = 5;

  Readings {
    all = List.copyOf(all);
  }

  static Readings none(OrderGrammar grammar) {
    return new Readings(grammar, List.of(List.of()));
  }

  /** Returns the readings with one typed word more; without any if it fits nowhere. */
  Readings with(String typed) {
    List<List<String>> longer = new ArrayList<>();
    for (List<String> reading : all) {
      for (String word : fitting(grammar.after(reading), typed)) {
        List<String> next = new ArrayList<>(reading);
        next.add(word);
        longer.add(List.copyOf(next));
      }
    }
    return new Readings(grammar, longer.stream().limit(MOST).toList());
  }

  /** Returns the one valid word a typed one is a slip of the fingers away from. */
  Optional<String> near(String typed) {
    String small = typed.toLowerCase(Locale.ROOT);
    List<String> near =
        small.length() < LEAST_TO_MEND ? List.of() : NearestWords.to(small, next().words());
    return near.size() == 1 ? Optional.of(near.get(0)) : Optional.empty();
  }

  private static List<String> fitting(Slot slot, String typed) {
    String small = typed.toLowerCase(Locale.ROOT);
    if (slot.words().contains(small)) {
      return List.of(small);
    }
    if (slot.isFree()) {
      return List.of(typed);
    }
    List<String> plain = slot.words().stream().filter(w -> begins(small, w)).toList();
    return plain.isEmpty()
        ? slot.words().stream().filter(w -> runs(small, w.split("-", -1), 0)).toList()
        : plain;
  }

  /** Returns whether a typed word is beginnings of the parts in turn, as {@code ftsu} is. */
  private static boolean runs(String typed, String[] parts, int part) {
    if (typed.isEmpty()) {
      return true;
    }
    for (int i = 1; part < parts.length && i <= typed.length(); i++) {
      boolean fits = parts[part].startsWith(typed.substring(0, i));
      if (fits && runs(typed.substring(i), parts, part + 1)) {
        return true;
      }
    }
    return false;
  }

  /** Returns whether a typed word begins a word, part by part between the hyphens. */
  private static boolean begins(String typed, String word) {
    String[] typedParts = typed.split("-", -1);
    String[] parts = word.split("-", -1);
    if (typedParts.length > parts.length) {
      return false;
    }
    for (int i = 0; i < typedParts.length; i++) {
      if (!parts[i].startsWith(typedParts[i])) {
        return false;
      }
    }
    return true;
  }

  boolean isNone() {
    return all.isEmpty();
  }

  boolean isOne() {
    return all.size() == 1;
  }

  /** Returns the words all readings begin with. */
  List<String> common() {
    int same = 0;
    while (!isNone() && same < all.get(0).size() && at(same).size() == 1) {
      same++;
    }
    return isNone() ? List.of() : all.get(0).subList(0, same);
  }

  /** Returns the different words that stand at one place in the readings. */
  List<String> at(int index) {
    return all.stream().map(r -> r.get(index)).distinct().toList();
  }

  /** Returns what can stand next, over all readings. */
  Slot next() {
    List<Slot> slots = all.stream().map(grammar::after).toList();
    List<String> words = slots.stream().flatMap(s -> s.words().stream()).distinct().toList();
    String what = slots.isEmpty() ? "" : slots.get(0).what();
    boolean isFree = slots.stream().anyMatch(Slot::isFree);
    return new Slot(what, words, isFree, slots.stream().anyMatch(Slot::canEnd));
  }
}
