package handwheel.screen;

import handwheel.debrief.Sentences;
import handwheel.logbook.Entry;
import handwheel.ship.Order;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What the trainee has heard, seen and said.
 *
 * @param lines sentences with their times, the oldest first
 * @param said his orders, the oldest first
 * @param repeated the repeat-back heard last, if there was one
 */
record Hearing(List<String> lines, List<Entry.OrderSaid> said, Optional<Entry.Repeated> repeated) {
  /** More than any screen shows. */
  private static final int MOST_LINES = 200;

  static final Hearing NOTHING = new Hearing(List.of(), List.of(), Optional.empty());

  Hearing {
    lines = List.copyOf(lines);
    said = List.copyOf(said);
  }

  Hearing with(Entry entry, String sentence) {
    List<String> more = last(lines, Sentences.clock(entry.t()) + " " + sentence);
    List<Entry.OrderSaid> orders = entry instanceof Entry.OrderSaid o ? last(said, o) : said;
    Optional<Entry.Repeated> heard = entry instanceof Entry.Repeated r ? Optional.of(r) : repeated;
    return new Hearing(more, orders, heard);
  }

  private static <T> List<T> last(List<T> list, T next) {
    List<T> all =
        new ArrayList<>(list.subList(Math.max(0, list.size() + 1 - MOST_LINES), list.size()));
    all.add(next);
    return all;
  }

  /**
   * Returns what corrects the man who repeated last: he is to stop, and what he was told is said
   * again. Empty if nobody has repeated anything.
   */
  List<Order> corrected(Expander expander) {
    Optional<Order> order =
        repeated
            .flatMap(r -> said.stream().filter(o -> o.n() == r.n()).findFirst())
            .flatMap(o -> expander.order(o.say()));
    return order.isEmpty()
        ? List.of()
        : List.of(new Order.Belay(repeated.orElseThrow().who()), order.get());
  }

  /** Returns what was heard last, to be told again. */
  String again() {
    return lines.isEmpty() ? "Nothing was heard yet." : "Again: " + lines.get(lines.size() - 1);
  }

  /** Returns the order that stops the man who was told something last; empty if nobody was. */
  Optional<Order> belayed(Expander expander) {
    for (int i = said.size() - 1; i >= 0; i--) {
      Optional<Order> belay = expander.order("belay " + said.get(i).say().split(" ", 2)[0]);
      if (belay.isPresent()) {
        return belay;
      }
    }
    return Optional.empty();
  }
}
