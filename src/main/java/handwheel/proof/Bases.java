package handwheel.proof;

import handwheel.casualty.Casualty;
import handwheel.ship.Ship;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/** The runs mutants are made from: as few as show every word that was drawn. */
final class Bases {
  private Bases() {}

  /**
   * Chooses among right runs with orders in them: the first, and each that shows a drawn word which
   * none before it showed.
   *
   * @param right runs that earned all points
   */
  static List<Base> of(Casualty casualty, Ship ship, List<Outcome> right) {
    TreeSet<String> seen = new TreeSet<>();
    List<Base> bases = new ArrayList<>();
    for (Outcome outcome : right) {
      boolean isNew = seen.addAll(outcome.words());
      if (!outcome.orders().isEmpty() && (isNew || bases.isEmpty())) {
        bases.add(Base.of(casualty, ship, outcome));
      }
    }
    return bases;
  }
}
