package handwheel.drill;

import handwheel.casualty.Casualty;
import handwheel.casualty.Never;
import handwheel.logbook.Entry;
import handwheel.plant.StateWalker;
import handwheel.ship.Fitting;
import handwheel.ship.Order;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Watches for forbidden acts: moving ones while the fitting moves, sendings when the order is said,
 * refused or not. Each is logged once for an order.
 */
final class Nevers {
  private final Scene scene;
  private final Facts facts;
  private final List<Never> moving = new ArrayList<>();
  private final List<Never> sending = new ArrayList<>();
  private final List<String> broken = new ArrayList<>();

  Nevers(Scene scene, Casualty casualty, Facts facts) {
    this.scene = scene;
    this.facts = facts;
    for (Never n : casualty.nevers()) {
      (n.act() instanceof Never.Moving ? moving : sending).add(n);
    }
  }

  /** Looks at every fitting somebody has his hand on by order. */
  void tick(List<Person> people) {
    for (Person p : people) {
      Job job = p.job;
      if (job != null && job.work != null && job.n > 0) {
        worked(job.n, job.work);
      }
    }
  }

  private void worked(int n, FittingWork work) {
    for (Never never : moving) {
      Never.Moving act = (Never.Moving) never.act();
      if (act.fitting().equals(work.fitting().id()) && act.isOpening() == isOpening(work)) {
        check(never, n, work.verb().word() + " " + act.fitting());
      }
    }
  }

  private boolean isOpening(FittingWork work) {
    Fitting f = work.fitting();
    var first = f.moves(work.verb()).get(0);
    return work.goal(first).orElse(0) > scene.plant.position(first.port())
        || work.goal(first).orElse(0) > 0.999;
  }

  /** Looks at an order that was just said to a person. */
  void said(Order order, int n, Person person, Optional<Goal> goal) {
    if (goal.isEmpty()) {
      return;
    }
    String to = goal.get().place().id();
    for (Never never : sending) {
      Never.Sending act = (Never.Sending) never.act();
      boolean isMeant = act.who().equals("anyone") || act.who().equals(person.id());
      boolean isThere = act.places().contains(person.legs.at().id());
      if (isMeant && !isThere && act.places().contains(to)) {
        check(never, n, order.text());
      }
    }
  }

  private void check(Never never, int n, String what) {
    String key = never.id() + " " + n;
    if (!broken.contains(key) && facts.holds(never.during())) {
      broken.add(key);
      scene.log(new Entry.Broke(scene.now, n, never.id(), what, facts.reading(never.during())));
    }
  }

  void walk(StateWalker walker) {
    walker.visit("broken", broken.size());
  }
}
