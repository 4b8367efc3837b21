package handwheel.app;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.random.RandomGenerator;

/**
 * Draws what a sealed drill is, from what is released: three times in ten an ordinary watch in
 * which nothing is wrong, else a casualty, each family as likely as another.
 */
final class SealedDraw {
  /** Family of the scripts in which nothing is wrong. */
  static final String ORDINARY = "ordinary-watch";

  /** Family of the scripts that are no surprise, such as lighting off. */
  static final String EVOLUTION = "evolution";

  private static final double ORDINARY_SHARE = 0.3;

  private final List<Shelf> released;
  private final RandomGenerator random;

  SealedDraw(List<Shelf> released, RandomGenerator random) {
    this.released = List.copyOf(released);
    this.random = random;
  }

  /** Makes a draw over the folder of drills. */
  static SealedDraw of(Drills drills, RandomGenerator random) throws Usage, IOException {
    List<Shelf> released = new ArrayList<>();
    for (String name : drills.scripts()) {
      Shelf shelf = Shelf.of(drills, name);
      if (shelf.isReleased() && !shelf.family().equals(EVOLUTION)) {
        released.add(shelf);
      }
    }
    return new SealedDraw(released, random);
  }

  /**
   * Draws a script.
   *
   * @return its name; empty if none is released
   */
  Optional<String> next() {
    TreeSet<String> families = new TreeSet<>(released.stream().map(Shelf::family).toList());
    if (families.isEmpty()) {
      return Optional.empty();
    }
    boolean hasOrdinary = families.remove(ORDINARY);
    boolean isOrdinary = families.isEmpty() || random.nextDouble() < ORDINARY_SHARE;
    String family = hasOrdinary && isOrdinary ? ORDINARY : any(List.copyOf(families));
    return Optional.of(
        any(released.stream().filter(s -> s.family().equals(family)).toList()).name());
  }

  private <T> T any(List<T> of) {
    return of.get(random.nextInt(of.size()));
  }
}
