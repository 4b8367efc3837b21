package handwheel.drill;

import handwheel.ship.Fitting;
import handwheel.ship.Order;
import java.util.List;

/**
 * How an order reaches a man: by voice in the room, by sign and touch under a roar, by phone from
 * without. About one line-up in twenty is understood wrongly (common practice, no source); a
 * controlling act never is.
 */
final class Hearing {
  private static final double WRONG_SHARE = 0.05;
  private static final long VOICE_TICKS = Engine.ticks(0.5);
  private static final long SIGN_TICKS = Engine.ticks(1);
  private static final long PHONE_TICKS = Engine.ticks(1.5);

  private final Scene scene;
  private final Crew crew;

  Hearing(Scene scene, Crew crew) {
    this.scene = scene;
    this.crew = crew;
  }

  /** Tells one man one thing; returns whether he took it. */
  boolean told(Person person, Order order, int n) {
    if (cannotAnswer(person)) {
      crew.refuse(person, order, n, "No answer.", true);
      return false;
    }
    if (person.isHurt()) {
      crew.refuse(person, order, n, "I am hurt.", true);
      return false;
    }
    boolean isControlling = order instanceof Order.Work w && w.verb().isControlling();
    Order heard = isControlling || person.isSupervisor() ? order : asHeard(person, order);
    Job job = job(person, heard, n, isControlling, heard != order);
    if (isControlling && isAtHand(person, (Order.Work) order)) {
      job.untilTick += person.legs.backTicks();
      person.takeFirst(job);
      return true;
    }
    return take(person, job);
  }

  private boolean take(Person person, Job job) {
    if (person.isSupervisor()) {
      person.dropAll(scene);
    }
    if (person.job == null && person.queue.isEmpty()) {
      person.job = job;
    } else if (!person.takeLast(job)) {
      crew.refuse(person, job.order, job.n, "My hands are full.", false);
      return false;
    }
    return true;
  }

  /** Tells a man to leave: a trip at his hand is still pulled, everything else is dropped. */
  void leave(Person person, Order.EveryoneLeave order, int n) {
    if (cannotAnswer(person)) {
      return;
    }
    Job held = person.job;
    boolean isTripping =
        held != null && held.isDoneFirst && held.order instanceof Order.Work && held.n > 0;
    if (!isTripping) {
      person.dropAll(scene);
      person.job = job(person, order, n, true, false);
    } else {
      person.queue.clear();
      person.queue.addLast(job(person, order, n, true, false));
    }
  }

  /** Calls a man who is out to the muster; what he has in hand goes first. */
  void called(Person person, Order.Muster order, int n) {
    if (!person.isDown() && person.job == null) {
      person.job = job(person, order, n, true, false);
    }
  }

  private Job job(Person person, Order order, int n, boolean isDoneFirst, boolean isWrong) {
    long ticks = person.isSupervisor() ? 0 : wordTicks(person) + person.pace.reactionTicks();
    return new Job(n, order, isDoneFirst, isWrong, scene.now + ticks);
  }

  private long wordTicks(Person person) {
    if (person.isInside() != crew.supervisor().isInside()) {
      return PHONE_TICKS;
    }
    return scene.isRoaring() && person.isInside() ? SIGN_TICKS : VOICE_TICKS;
  }

  private boolean cannotAnswer(Person person) {
    boolean isDrowned = person.isInside() && scene.isRoaring() && !crew.supervisor().isInside();
    return person.isDown() || isDrowned;
  }

  private boolean isAtHand(Person person, Order.Work order) {
    Fitting fitting = scene.ship.fitting(order.fittings().get(0)).orElse(null);
    String here = person.legs.at().id();
    return fitting != null
        && fitting.controlAt(here).isPresent()
        && order.from().map(here::equals).orElse(true)
        && person.isInReach(here);
  }

  /** Returns the order as he understood it: now and then the fitting beside the one meant. */
  private Order asHeard(Person person, Order order) {
    if (!(order instanceof Order.Work work) || person.hearing.nextDouble() >= WRONG_SHARE) {
      return order;
    }
    List<String> beside =
        scene.ship.fittings().stream()
            .filter(f -> f.id().equals(work.fittings().get(0)))
            .flatMap(f -> beside(f, work).stream())
            .toList();
    if (beside.isEmpty()) {
      return order;
    }
    int pick = (int) (person.hearing.nextDouble() * beside.size());
    return new Order.Work(
        work.who(), work.verb(), List.of(beside.get(pick)), work.setting(), work.from());
  }

  private List<String> beside(Fitting meant, Order.Work work) {
    return scene.ship.fittings().stream()
        .filter(f -> !work.fittings().contains(f.id()) && !f.moves(work.verb()).isEmpty())
        .filter(
            f ->
                f.controls().stream().anyMatch(c -> meant.controlAt(c.place()).isPresent())
                    && work.from().map(p -> f.controlAt(p).isPresent()).orElse(true))
        .map(Fitting::id)
        .toList();
  }
}
