package handwheel.drill;

import handwheel.logbook.Entry;
import handwheel.plant.StateWalker;
import handwheel.ship.Order;
import handwheel.ship.Place;
import handwheel.ship.Ship;
import handwheel.ship.Watchstander;
import java.util.ArrayDeque;
import org.jspecify.annotations.Nullable;

/** One of the watch: a body with a place, a dose, one job in hand and at most three queued. */
final class Person {
  /** Dose at which a person is hurt and leaves by himself. Source: ISO 13571, from memory. */
  static final double HURT_DOSE = 0.3;

  /** Dose at which a person is down. */
  static final double DOWN_DOSE = 1;

  private static final int MOST_QUEUED = 3;

  /** Within so many ticks' walk a trip counts as within arm's reach. */
  private static final long REACH_TICKS = 3L * Engine.TICKS_PER_S;

  final Watchstander watch;
  final Pace pace;
  final Legs legs;
  final SplitMix64 hearing;
  final ArrayDeque<Job> queue = new ArrayDeque<>();
  final boolean belongsInside;

  private final PersonNames names;

  @Nullable Job job;
  private double heatDose;
  private double gasDose;
  private boolean isHurt;
  private boolean isDown;

  Person(Watchstander watch, Place at, Pace pace, SplitMix64 hearing) {
    this.watch = watch;
    this.pace = pace;
    this.legs = new Legs(at, pace);
    this.hearing = hearing;
    this.belongsInside = at.isInside();
    this.names = PersonNames.of("person." + watch.id());
  }

  String id() {
    return watch.id();
  }

  boolean isSupervisor() {
    return id().equals(Ship.SUPERVISOR);
  }

  boolean isHurt() {
    return isHurt;
  }

  boolean isDown() {
    return isDown;
  }

  boolean isInside() {
    return legs.at().isInside();
  }

  /** The higher of the doses of heat and of gas; they are not added up. Source: ISO 13571. */
  double dose() {
    return StrictMath.max(heatDose, gasDose);
  }

  /** Returns the dose he would have after some time at a place. */
  double doseAfter(double seconds, Place place, Scene scene) {
    return StrictMath.max(
        heatDose + scene.doseRatePerS(place) * seconds,
        gasDose + scene.gasDoseRatePerS(place) * seconds);
  }

  /** Returns whether he could put his hand on a control at that place at once. */
  boolean isInReach(String placeId) {
    return legs.at().id().equals(placeId) && legs.backTicks() <= REACH_TICKS;
  }

  /** Takes a job as the next thing he does, before what he has in hand. */
  void takeFirst(Job first) {
    Job held = job;
    if (held != null) {
      held.stage = held.stage == Job.Stage.WALKING ? Job.Stage.HEARING : held.stage;
      queue.addFirst(held);
    }
    legs.turnBack();
    job = first;
  }

  /** Takes a job after those he has; returns false if his hands are full. */
  boolean takeLast(Job last) {
    if (queue.size() >= MOST_QUEUED) {
      return false;
    }
    queue.addLast(last);
    return true;
  }

  /** Drops everything in hand and queued. */
  void dropAll(Scene scene) {
    queue.clear();
    dropJob(scene);
  }

  /** Drops the job in hand. */
  void dropJob(Scene scene) {
    Job held = job;
    if (held != null && held.work != null) {
      held.work.letGo(scene);
    }
    job = null;
    legs.turnBack();
  }

  /** Drops what he was told last. */
  void belay(Scene scene) {
    if (queue.isEmpty() || (job != null && job.n > queue.getLast().n)) {
      dropJob(scene);
    } else {
      queue.removeLast();
    }
  }

  /** Breathes and feels for one tick. */
  void breathe(Scene scene) {
    if (isDown || !isInside()) {
      return;
    }
    heatDose += scene.doseRatePerS(legs.at()) / Engine.TICKS_PER_S;
    gasDose += scene.gasDoseRatePerS(legs.at()) / Engine.TICKS_PER_S;
    if (!isHurt && dose() >= HURT_DOSE) {
      isHurt = true;
      log(scene, "hurt");
      leaveByHimself(scene);
    }
    if (dose() >= DOWN_DOSE) {
      isDown = true;
      log(scene, "down");
      dropAll(scene);
    }
  }

  private void leaveByHimself(Scene scene) {
    boolean isLeaving = job != null && job.order instanceof Order.EveryoneLeave;
    if (!isLeaving) {
      dropAll(scene);
      log(scene, "left");
      job = new Job(0, new Order.EveryoneLeave(), true, false, scene.now);
    }
  }

  private void log(Scene scene, String is) {
    long milli = (long) StrictMath.floor(dose() * 1000);
    scene.log(new Entry.Person(scene.now, id(), is, milli));
  }

  void walk(Scene scene, StateWalker walker) {
    walker.visit(names.dose(), heatDose);
    walker.visit(names.gasDose(), gasDose);
    walker.visit(names.hurt(), isHurt ? 1 : 0);
    walker.visit(names.down(), isDown ? 1 : 0);
    walker.visit(names.hearing(), hearing.state() >> 11);
    legs.walk(names.legs(), scene.ship.places(), walker);
    walker.visit(names.queued(), queue.size());
    if (job != null) {
      job.walk(names.job(), walker);
    }
  }
}
