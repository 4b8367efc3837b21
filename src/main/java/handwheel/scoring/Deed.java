package handwheel.scoring;

import handwheel.logbook.Entry;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One thing done toward a step.
 *
 * @param told the order that did it; empty where it was done unordered
 * @param first the earliest order for it that is not blamed for what came between; empty where none
 * @param moved the movement; empty where nothing moves
 */
record Deed(Optional<Told> told, Optional<Told> first, Optional<Entry.Moved> moved) {
  boolean isByOrder(int n) {
    return Stream.concat(told.stream(), first.stream()).anyMatch(o -> o.n() == n);
  }

  static List<Integer> orders(List<Deed> deeds) {
    return deeds.stream().flatMap(d -> d.told().stream()).map(Told::n).distinct().toList();
  }
}
