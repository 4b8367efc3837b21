package handwheel.drill;

import handwheel.ship.Control;
import handwheel.ship.Fitting;
import handwheel.ship.Order;
import handwheel.ship.Place;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Where an order takes a man and how long that is.
 *
 * @param route how he gets there
 * @param place where it ends
 * @param workTicks how long his hand is on it after that
 */
record Goal(Roads.Route route, Place place, long workTicks) {
  /** Time to read a gauge and say it. */
  static final long READ_TICKS = Engine.ticks(1.5);

  /** Time to look about and say what is seen. */
  static final long LOOK_TICKS = Engine.ticks(2);

  long needTicks() {
    return Engine.ticks(route.seconds()) + workTicks;
  }

  /**
   * Finds where an order takes a person; steam in the way is walked around.
   *
   * @return empty if there is no way there or nothing to do it with
   */
  static Optional<Goal> of(Scene scene, Person person, Job job) {
    return job.order.accept(new Finder(scene, person, job, p -> p.isInside() && scene.isInJet(p)));
  }

  /** The same as if no steam stood in the way: where the order means him to go. */
  static Optional<Goal> meant(Scene scene, Person person, Job job) {
    return job.order.accept(new Finder(scene, person, job, p -> false));
  }

  /** Finds the quickest control inside that no steam stands before; empty for other orders. */
  static Optional<Goal> inside(Scene scene, Person person, Job job) {
    return job.order instanceof Order.Work work
        ? new Finder(scene, person, job, p -> !p.isInside() || scene.isInJet(p)).anyControl(work)
        : Optional.empty();
  }

  private record Finder(Scene scene, Person person, Job job, Predicate<Place> isBlocked)
      implements Order.Visitor<Optional<Goal>> {
    private Optional<Goal> to(Predicate<Place> goal, long workTicks) {
      Place start = person.legs.at();
      return scene
          .roads
          .quickest(start, goal, isBlocked, person.pace)
          .map(r -> new Goal(r, r.end(start), workTicks));
    }

    @Override
    public Optional<Goal> work(Order.Work order) {
      Optional<Fitting> fitting = scene.ship.fitting(order.fittings().get(job.fitting));
      if (fitting.isEmpty()) {
        return to(p -> p.equals(person.legs.at()), 0);
      }
      boolean staysOut = order.from().isEmpty() && isOutOf(fitting.get());
      Predicate<Place> hasControl =
          p ->
              fitting.get().controlAt(p.id()).isPresent()
                  && order.from().map(p.id()::equals).orElse(true)
                  && !(staysOut && p.isInside());
      return to(hasControl, 0).map(g -> withWork(g, order, fitting.get()));
    }

    /** The quickest control at a place that is not blocked, wherever the order says. */
    Optional<Goal> anyControl(Order.Work order) {
      Optional<Fitting> fitting = scene.ship.fitting(order.fittings().get(job.fitting));
      return fitting.flatMap(
          f ->
              to(p -> f.controlAt(p.id()).isPresent() && !isBlocked.test(p), 0)
                  .map(g -> withWork(g, order, f)));
    }

    /** A man who is out goes back in only when he is told the place, if there is a way without. */
    private boolean isOutOf(Fitting fitting) {
      return !person.isInside()
          && fitting.controls().stream()
              .anyMatch(c -> !scene.ship.place(c.place()).orElseThrow().isInside());
    }

    private Goal withWork(Goal goal, Order.Work order, Fitting fitting) {
      Control control = fitting.controlAt(goal.place().id()).orElseThrow();
      FittingWork work = new FittingWork(fitting, control, order.verb(), order.setting());
      return new Goal(goal.route(), goal.place(), work.estimate(scene, person.pace.hand()));
    }

    @Override
    public Optional<Goal> go(Order.Go order) {
      return to(p -> p.id().equals(order.place()), 0);
    }

    @Override
    public Optional<Goal> look(Order.Look order) {
      return to(p -> p.id().equals(order.place()), LOOK_TICKS);
    }

    @Override
    public Optional<Goal> read(Order.Read order) {
      var at = scene.ship.gauge(order.gauge()).orElseThrow().at();
      boolean isHere = order.who().isEmpty();
      return to(p -> at.contains(p.id()) && (!isHere || p.equals(person.legs.at())), READ_TICKS);
    }

    @Override
    public Optional<Goal> report(Order.Report order) {
      return to(p -> p.equals(person.legs.at()), 0);
    }

    @Override
    public Optional<Goal> everyoneLeave(Order.EveryoneLeave order) {
      return to(p -> !p.isInside(), 0);
    }

    @Override
    public Optional<Goal> muster(Order.Muster order) {
      return to(p -> p.id().equals(order.place()), 0);
    }

    @Override
    public Optional<Goal> belay(Order.Belay order) {
      return to(p -> p.equals(person.legs.at()), 0);
    }
  }
}
