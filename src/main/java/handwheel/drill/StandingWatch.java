package handwheel.drill;

import handwheel.plant.StateWalker;
import handwheel.ship.StandingAct;

/** One standing act of a drilled man: he sees something at his station and acts unordered. */
final class StandingWatch {
  private final StandingAct act;
  private final Person person;
  private final String station;
  private long seenTick = -1;
  private boolean isDone;

  StandingWatch(StandingAct act, Person person) {
    this.act = act;
    this.person = person;
    this.station = person.legs.at().id();
  }

  void tick(Scene scene) {
    if (isDone || !person.legs.at().id().equals(station) || person.isDown()) {
      return;
    }
    boolean isSeen = scene.plant.value(act.sees()) < act.below();
    if (!isSeen) {
      seenTick = -1;
    } else if (seenTick < 0) {
      seenTick = scene.now;
    } else if (scene.now - seenTick >= Engine.ticks(act.afterS())) {
      isDone = true;
      person.takeFirst(new Job(0, act.order(), true, false, scene.now));
    }
  }

  void walk(StateWalker walker) {
    walker.visit("standing.seen", seenTick);
    walker.visit("standing.done", isDone ? 1 : 0);
  }
}
