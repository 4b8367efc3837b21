package handwheel.drill;

import handwheel.logbook.Entry;
import handwheel.ship.Control;
import handwheel.ship.Fitting;
import handwheel.ship.Order;
import handwheel.ship.Place;
import java.util.Optional;

/**
 * How a man does a job: hears, repeats back, waits for the go-ahead, walks, works, reports. A
 * controlling act is done first and repeated after.
 */
final class Doing {
  /** How long he waits for the go-ahead before it counts as given. */
  static final long GO_AHEAD_TICKS = Engine.ticks(2);

  private final Scene scene;
  private final Holding holding;

  Doing(Scene scene, Holding holding) {
    this.scene = scene;
    this.holding = holding;
  }

  /** Lets a person do one tick's worth of his job. */
  void tick(Person person) {
    if (person.job == null) {
      person.job = person.queue.pollFirst();
    }
    Job job = person.job;
    if (job == null || person.isDown()) {
      return;
    }
    switch (job.stage) {
      case HEARING -> {
        if (scene.now >= job.untilTick) {
          heard(person, job);
        }
      }
      case AWAITING -> {
        if (scene.now >= job.untilTick) {
          begin(person, job);
        }
      }
      case WALKING -> {
        if (person.legs.tick()) {
          there(person, job);
        }
      }
      case WORKING -> {
        if (scene.now >= job.untilTick) {
          done(person, job);
        }
      }
    }
  }

  /** Gives the go-ahead to a man who waits for it. */
  void goAhead(Person person) {
    if (person.job != null && person.job.stage == Job.Stage.AWAITING) {
      person.job.untilTick = scene.now;
    }
  }

  private void heard(Person person, Job job) {
    boolean isSilent = person.isSupervisor() || job.n == 0 || job.isDoneFirst || job.isRepeated;
    if (isSilent) {
      begin(person, job);
      return;
    }
    repeat(person, job);
    if (job.order instanceof Order.Work) {
      job.stage = Job.Stage.AWAITING;
      job.untilTick = scene.now + GO_AHEAD_TICKS;
    } else {
      begin(person, job);
    }
  }

  private void repeat(Person person, Job job) {
    job.isRepeated = true;
    scene.log(new Entry.Repeated(scene.now, job.n, person.id(), job.order.text()));
  }

  private void begin(Person person, Job job) {
    Optional<Goal> goal = Goal.of(scene, person, job);
    if (goal.isEmpty()) {
      refuse(person, job, whyNoWay(job));
      return;
    }
    if (wouldKill(person, goal.get())) {
      refuse(person, job, "That air would kill me.");
      return;
    }
    if (goal.get().route().legs().isEmpty()) {
      there(person, job);
    } else {
      person.legs.setOut(goal.get().route());
      job.stage = Job.Stage.WALKING;
    }
  }

  private String whyNoWay(Job job) {
    if (job.order instanceof Order.Read r && r.who().isEmpty()) {
      return "That cannot be read from here.";
    }
    return hasControl(job) ? "Steam in the way." : "It cannot be worked from there.";
  }

  private boolean hasControl(Job job) {
    if (job.order instanceof Order.Work w && w.from().isPresent()) {
      Optional<Fitting> f = scene.ship.fitting(w.fittings().get(job.fitting));
      return f.isEmpty() || f.get().controlAt(w.from().get()).isPresent();
    }
    return true;
  }

  private boolean wouldKill(Person person, Goal goal) {
    Place place = goal.place();
    double need = (double) goal.needTicks() / Engine.TICKS_PER_S;
    return place.isInside() && person.doseAfter(need, place, scene) >= Person.DOWN_DOSE;
  }

  private void there(Person person, Job job) {
    String place = person.legs.at().id();
    if (job.order instanceof Order.Work w) {
      work(person, job, w);
    } else if (job.order instanceof Order.Read) {
      watch(job, Goal.READ_TICKS);
    } else if (job.order instanceof Order.Look) {
      watch(job, Goal.LOOK_TICKS);
    } else {
      if (job.stage == Job.Stage.WALKING || !(job.order instanceof Order.Muster)) {
        scene.log(new Entry.Arrived(scene.now, person.id(), place));
      }
      person.job = null;
    }
  }

  private void watch(Job job, long ticks) {
    job.stage = Job.Stage.WORKING;
    job.untilTick = scene.now + ticks;
  }

  private void work(Person person, Job job, Order.Work order) {
    String id = order.fittings().get(job.fitting);
    Optional<Fitting> fitting = scene.ship.fitting(id);
    if (fitting.isEmpty()) {
      hold(person, job, order);
      return;
    }
    Control control = fitting.get().controlAt(person.legs.at().id()).orElseThrow();
    FittingWork work = new FittingWork(fitting.get(), control, order.verb(), order.setting());
    if (!work.canBeDone()) {
      refuse(person, job, "It cannot be set to that.");
      return;
    }
    holding.handTaken(fitting.get());
    scene.log(new Entry.Began(scene.now, job.n, person.id(), id, control.place()));
    job.work = work;
    watch(job, work.start(scene, person.pace.hand()));
  }

  private void hold(Person person, Job job, Order.Work order) {
    if (holding.hold(person, order)) {
      finish(person, job);
    } else {
      refuse(person, job, "I cannot hold that.");
    }
  }

  private void done(Person person, Job job) {
    FittingWork work = job.work;
    if (work != null && job.order instanceof Order.Work w) {
      worked(person, job, work);
      job.fitting++;
      if (job.fitting < w.fittings().size()) {
        begin(person, job);
      } else {
        finish(person, job);
      }
      return;
    }
    told(person, job);
    person.job = null;
  }

  private void worked(Person person, Job job, FittingWork work) {
    job.work = null;
    String id = work.fitting().id();
    Optional<String> failure = work.failure(scene);
    if (failure.isPresent()) {
      scene.log(new Entry.Refused(scene.now, job.n, person.id(), id, failure.get(), true));
    } else {
      String at = work.control().place();
      scene.log(new Entry.Moved(scene.now, job.n, person.id(), id, at, work.milli(scene)));
    }
  }

  private void finish(Person person, Job job) {
    if (job.isDoneFirst && job.n > 0 && !person.isSupervisor()) {
      repeat(person, job);
    }
    person.job = null;
  }

  private void told(Person person, Job job) {
    if (job.order instanceof Order.Read r) {
      long milli = scene.instruments.milli(scene.instruments.index(r.gauge()));
      scene.log(new Entry.Reading(scene.now, job.n, person.id(), r.gauge(), milli));
    } else if (job.order instanceof Order.Look l) {
      String seen = Seen.at(scene, person.legs.at());
      scene.log(new Entry.Looked(scene.now, job.n, person.id(), l.place(), seen));
    }
  }

  /** Logs a refusal and drops the job. */
  private void refuse(Person person, Job job, String why) {
    String about = "";
    if (job.order instanceof Order.Work w) {
      about = w.fittings().get(Math.min(job.fitting, w.fittings().size() - 1));
    }
    scene.log(new Entry.Refused(scene.now, job.n, person.id(), about, why, false));
    person.job = null;
  }
}
