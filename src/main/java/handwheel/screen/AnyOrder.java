package handwheel.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * Reads a line whose words stand in another order than an order has, such as {@code shut main-stop
 * checkman}: every turn is tried, and only a line with a single complete reading is an order.
 */
final class AnyOrder {
  /** Five words stand in 120 orders; a longer line is not turned. */
  private static final int MOST_WORDS = 5;

  private final OrderGrammar grammar;
  private final TreeSet<String> found = new TreeSet<>();

  private AnyOrder(OrderGrammar grammar) {
    this.grammar = grammar;
  }

  static Optional<List<String>> of(OrderGrammar grammar, List<String> words) {
    boolean isSet = words.contains("to") || words.contains("from");
    if (words.size() < 2 || words.size() > MOST_WORDS || isSet) {
      return Optional.empty();
    }
    AnyOrder any = new AnyOrder(grammar);
    any.turn(Readings.none(grammar), words);
    return any.found.size() == 1
        ? Optional.of(List.of(any.found.first().split(" ", -1)))
        : Optional.empty();
  }

  private void turn(Readings before, List<String> left) {
    if (left.isEmpty()) {
      before.all().stream()
          .filter(r -> grammar.after(r).canEnd())
          .forEach(r -> found.add(String.join(" ", r)));
      return;
    }
    for (int i = 0; i < left.size() && found.size() < 2; i++) {
      Readings longer = before.with(left.get(i));
      if (!longer.isNone()) {
        List<String> rest = new ArrayList<>(left);
        rest.remove(i);
        turn(longer, rest);
      }
    }
  }
}
