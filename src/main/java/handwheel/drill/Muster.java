package handwheel.drill;

import handwheel.logbook.Entry;
import handwheel.plant.StateWalker;
import java.util.List;

/**
 * The count by name. Whoever stands outside is accounted for; the count starts when nobody of the
 * watch is still on his way out, or after half a minute, and takes a second a name.
 */
final class Muster {
  private static final long PATIENCE_TICKS = Engine.ticks(30);

  private final Scene scene;
  private final List<Person> watch;
  private String place = "";
  private int n;
  private long calledTick;
  private long countedTick = -1;
  private boolean isWhole;

  Muster(Scene scene, List<Person> people) {
    this.scene = scene;
    this.watch = people.stream().filter(p -> p.belongsInside).toList();
  }

  boolean call(String atPlace, int order) {
    place = atPlace;
    n = order;
    calledTick = scene.now;
    countedTick = -1;
    return true;
  }

  /** Returns whether the last count found nobody missing. */
  boolean isWhole() {
    return isWhole;
  }

  void tick() {
    if (place.isEmpty()) {
      return;
    }
    if (countedTick < 0) {
      if (isReady()) {
        countedTick = scene.now + (long) Engine.TICKS_PER_S * watch.size();
      }
    } else if (scene.now >= countedTick) {
      count();
    }
  }

  private boolean isReady() {
    boolean isSomebodyThere = watch.stream().anyMatch(p -> p.legs.at().id().equals(place));
    boolean isSomebodyComing =
        watch.stream().anyMatch(p -> !p.isDown() && (p.isInside() || isComing(p)));
    return isSomebodyThere && (!isSomebodyComing || scene.now - calledTick >= PATIENCE_TICKS);
  }

  private boolean isComing(Person p) {
    return p.job != null && p.job.n == n && !p.legs.at().id().equals(place);
  }

  private void count() {
    List<String> missing = watch.stream().filter(Person::isInside).map(Person::id).toList();
    int of = watch.size();
    isWhole = missing.isEmpty();
    scene.log(new Entry.Counted(scene.now, n, of - missing.size(), of, String.join(" ", missing)));
    place = "";
  }

  void walk(StateWalker walker) {
    walker.visit("muster.called", place.isEmpty() ? 0 : 1);
    walker.visit("muster.at", countedTick);
    walker.visit("muster.whole", isWhole ? 1 : 0);
  }
}
