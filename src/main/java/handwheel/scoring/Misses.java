package handwheel.scoring;

import handwheel.casualty.Step;
import handwheel.casualty.StepTest;
import handwheel.logbook.Entry;
import handwheel.ship.Order;
import handwheel.ship.Ship;
import handwheel.ship.Verb;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Stream;

/**
 * Tells why a step was not done. Whatever the reason, it costs all its points or, excused, none.
 */
final class Misses {
  private final RunLog log;
  private final Movements movements;
  private final Fates fates;
  private final Starts starts;
  private final Excuse excuse;
  private final Strays strays;
  private final Seen seen;

  Misses(List<Step> steps, Ship ship, RunLog log) {
    this.log = log;
    this.movements = new Movements(ship, log);
    this.fates = new Fates(log);
    this.starts = new Starts(steps, ship, log);
    this.excuse = new Excuse(log, fates, starts);
    this.strays = new Strays(steps, ship, log);
    this.seen = new Seen(ship, log);
  }

  /** Tells of a step that was done before anything called for it. */
  Miss uncalled(Step step, Act act) {
    String what =
        "Done before `"
            + step.within().or(step::done).orElseThrow().of()
            + "` called for it: "
            + step.test().accept(new Wanted());
    int points = step.grade().points();
    return new Miss(ErrorClass.EARLY, points, act.instantTick(), seen(step), what, false);
  }

  /** Tells why; steps must be asked about in the order of the script. */
  Miss of(Step step) {
    List<Aim> open =
        step.test().accept(new Aims(log)).stream().filter(a -> !isReached(a, step)).toList();
    if (!open.isEmpty() && open.stream().allMatch(a -> excuse.isExcused(step, a))) {
      return excused(step, open);
    }
    ErrorClass type = type(step, open);
    int points = step.grade().points();
    return new Miss(type, points, dueTick(step), seen(step), what(type, step), false);
  }

  private Miss excused(Step step, List<Aim> open) {
    Optional<Late> late =
        open.stream()
            .flatMap(a -> excuse.late(step, a).stream())
            .reduce((a, b) -> b.ticks() > a.ticks() ? b : a);
    int points = late.map(l -> Math.min(l.seconds(), step.grade().points())).orElse(0);
    ErrorClass type = points == 0 ? ErrorClass.NO_FAULT : ErrorClass.LATE;
    String what = "Crew or gear failed it" + (points == 0 ? "" : ", but it was ordered late");
    return new Miss(type, points, dueTick(step), seen(step), what, true);
  }

  private String seen(Step step) {
    return step.test().accept(seen);
  }

  private boolean isReached(Aim aim, Step step) {
    return step.test() instanceof StepTest.FittingIs f
        && !movements.reaching(aim.fitting().orElseThrow(), Bearing.wanted(f.isOpen())).isEmpty();
  }

  private ErrorClass type(Step step, List<Aim> open) {
    if (open.stream().anyMatch(a -> fates.isMisheardBefore(a, Long.MAX_VALUE))) {
      return ErrorClass.NOT_CONFIRMED;
    }
    if (step.test() instanceof StepTest.Reported) {
      return ErrorClass.NOT_REPORTED;
    }
    if (step.test() instanceof StepTest.Mustered) {
      return log.all(Entry.Counted.class).findFirst().isPresent()
          ? ErrorClass.PARTIAL
          : ErrorClass.OMITTED;
    }
    return step.test() instanceof StepTest.FittingIs f
        ? fittingType(step, f, open)
        : ErrorClass.OMITTED;
  }

  private ErrorClass fittingType(Step step, StepTest.FittingIs test, List<Aim> open) {
    boolean isSomeDone = open.size() < test.fittings().size();
    if (isSomeDone || open.stream().anyMatch(a -> isPartWay(a, test))) {
      return ErrorClass.PARTIAL;
    }
    if (open.stream().anyMatch(a -> isMovedTheOtherWay(a, test))) {
      return ErrorClass.WRONG_WAY;
    }
    return strays.isTakenFor(step) ? ErrorClass.WRONG_FITTING : ErrorClass.OMITTED;
  }

  /** Begun and not finished, or set to something between. */
  private boolean isPartWay(Aim aim, StepTest.FittingIs test) {
    String fitting = aim.fitting().orElseThrow();
    Stream<Integer> begun =
        log.all(Entry.Began.class).filter(b -> b.fitting().equals(fitting)).map(Entry.Began::n);
    Stream<Integer> moved = movements.of(fitting).stream().map(Entry.Moved::n);
    return begun.anyMatch(n -> log.order(n).filter(aim::isSoughtBy).isPresent())
        || moved.anyMatch(n -> !test.isOpen() && log.order(n).filter(Misses::isSet).isPresent());
  }

  private static boolean isSet(Told told) {
    return told.order().filter(o -> o instanceof Order.Work w && w.verb() == Verb.SET).isPresent();
  }

  private boolean isMovedTheOtherWay(Aim aim, StepTest.FittingIs test) {
    Bearing other = Bearing.wanted(test.isOpen()).opposite();
    return movements.reaching(aim.fitting().orElseThrow(), other).stream().anyMatch(m -> m.n() > 0);
  }

  /** When its time ran out, or the end of the run. */
  private long dueTick(Step step) {
    OptionalLong due =
        Stream.of(step.within(), step.done())
            .flatMap(Optional::stream)
            .map(starts::dueTick)
            .filter(OptionalLong::isPresent)
            .mapToLong(OptionalLong::getAsLong)
            .findFirst();
    return Math.min(due.orElse(Long.MAX_VALUE), log.lastTick());
  }

  private static String what(ErrorClass type, Step step) {
    String wanted = step.test().accept(new Wanted());
    return switch (type) {
      case NOT_CONFIRMED -> "A wrong repeat-back was not caught, and this was not done: " + wanted;
      case PARTIAL -> "Done in part only: " + wanted;
      case WRONG_WAY -> "Moved the other way: " + wanted;
      case WRONG_FITTING -> "Another fitting was worked in its place: " + wanted;
      case OMITTED, LATE, EARLY, OUT_OF_ORDER, WRONG_PLACE, UNSAFE, NOT_REPORTED, HARM, NO_FAULT ->
          "Not done: " + wanted;
    };
  }
}
