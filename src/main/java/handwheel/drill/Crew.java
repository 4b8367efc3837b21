package handwheel.drill;

import handwheel.casualty.CrewState;
import handwheel.logbook.Entry;
import handwheel.plant.StateWalker;
import handwheel.ship.Order;
import handwheel.ship.Place;
import handwheel.ship.Ship;
import handwheel.ship.Watchstander;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The watch: hears orders, does them in roster order, is hurt, is counted. */
final class Crew {
  private final Scene scene;
  private final List<Person> people = new ArrayList<>();
  private final Person supervisor;
  private final Holding holding;
  private final Doing doing;
  private final Reports reports;
  private final Muster muster;
  private final List<StandingWatch> standing = new ArrayList<>();
  private final Hearing hearing;

  Crew(Scene scene, CrewState state, Paces paces) {
    this.scene = scene;
    for (Watchstander w : scene.ship.watch()) {
      Place at = scene.ship.place(w.at()).orElseThrow();
      people.add(new Person(w, at, paces.of(w.id()), paces.hearing(w.id())));
    }
    supervisor = person(Ship.SUPERVISOR);
    holding = new HandLaws(scene, people, state);
    doing = new Doing(scene, holding);
    reports = new Reports(scene);
    muster = new Muster(scene, people);
    hearing = new Hearing(scene, this);
    if (state == CrewState.DRILLED) {
      scene.ship.standing().forEach(s -> standing.add(new StandingWatch(s, person(s.who()))));
    }
  }

  Person person(String id) {
    return find(id).orElseThrow(() -> new IllegalArgumentException("no watchstander " + id));
  }

  Optional<Person> find(String id) {
    for (Person p : people) {
      if (p.id().equals(id)) {
        return Optional.of(p);
      }
    }
    return Optional.empty();
  }

  /** Who inside would be soonest at a control of what was ordered; empty if nobody gets there. */
  Optional<Entry.Inside> soonestInside(Job job) {
    return people.stream()
        .filter(p -> p.isInside() && !p.isDown() && !p.isSupervisor())
        .flatMap(p -> Goal.inside(scene, p, job).map(g -> inside(p, g, job)).stream())
        .reduce((a, b) -> b.need() < a.need() ? b : a);
  }

  private Entry.Inside inside(Person person, Goal goal, Job job) {
    long hurtTicks = scene.hurtTicks(goal.place());
    return new Entry.Inside(scene.now, job.n, person.id(), goal.needTicks(), hurtTicks);
  }

  List<Person> people() {
    return people;
  }

  Person supervisor() {
    return supervisor;
  }

  boolean isCounted() {
    return muster.isWhole();
  }

  /** Takes an order that was just said. */
  void hear(Order order, int n) {
    order.accept(new Dispatch(this, n));
  }

  void acknowledged() {
    people.forEach(doing::goAhead);
  }

  /** Lets everybody do one tick, in roster order. */
  void tick() {
    holding.tick();
    for (StandingWatch s : standing) {
      s.tick(scene);
    }
    for (Person p : people) {
      doing.tick(p);
    }
    scene.traineeAt = supervisor().legs.at();
    reports.tick();
    muster.tick();
  }

  /** Lets everybody breathe for one tick. */
  void breathe() {
    for (Person p : people) {
      p.breathe(scene);
    }
  }

  void walk(StateWalker walker) {
    for (Person p : people) {
      p.walk(scene, walker);
    }
    holding.walk(walker);
    reports.walk(walker);
    muster.walk(walker);
    standing.forEach(s -> s.walk(walker));
  }

  /** Gives each kind of order to whom it is meant for. */
  private record Dispatch(Crew crew, int n) implements Order.Visitor<Boolean> {
    @Override
    public Boolean work(Order.Work order) {
      return crew.hearing.told(crew.person(order.who()), order, n);
    }

    @Override
    public Boolean go(Order.Go order) {
      return crew.hearing.told(crew.person(order.who()), order, n);
    }

    @Override
    public Boolean look(Order.Look order) {
      return crew.hearing.told(crew.person(order.who()), order, n);
    }

    @Override
    public Boolean read(Order.Read order) {
      Person reader = order.who().map(crew::person).orElseGet(crew::supervisor);
      return crew.hearing.told(reader, order, n);
    }

    @Override
    public Boolean report(Order.Report order) {
      return crew.reports.pass(order, n);
    }

    @Override
    public Boolean everyoneLeave(Order.EveryoneLeave order) {
      crew.people.stream().filter(Person::isInside).forEach(p -> crew.hearing.leave(p, order, n));
      return true;
    }

    @Override
    public Boolean muster(Order.Muster order) {
      for (Person p : crew.people) {
        if (p.belongsInside && !p.isInside()) {
          crew.hearing.called(p, order, n);
        }
      }
      return crew.muster.call(order.place(), n);
    }

    @Override
    public Boolean belay(Order.Belay order) {
      Person p = crew.person(order.who());
      p.belay(crew.scene);
      return true;
    }
  }

  /** Logs that a man does not do what he was told. */
  void refuse(Person person, Order order, int n, String why, boolean isFault) {
    String about = order instanceof Order.Work w ? w.fittings().get(0) : "";
    scene.log(new Entry.Refused(scene.now, n, person.id(), about, why, isFault));
  }
}
