package handwheel.scoring;

import handwheel.casualty.Step;
import handwheel.casualty.StepTest;
import handwheel.logbook.Entry;
import handwheel.ship.Order;
import handwheel.ship.Place;
import handwheel.ship.Ship;
import java.util.List;
import java.util.Optional;

/**
 * Where an act may be done. With {@code hurt} the time a man can stand there and {@code need} the
 * time he needs: in a jet, or with hurt below need, no place is right; from twice need on the
 * script's side is right; in between every side is. Outside is right too where nobody inside could
 * have done it with that time to spare. A man who acts unordered is not judged, nor is anybody for
 * reading, reporting or counting.
 */
final class PlaceRule {
  private final Ship ship;
  private final RunLog log;

  PlaceRule(Ship ship, RunLog log) {
    this.ship = ship;
    this.log = log;
  }

  /** The worst fault of an act. */
  Optional<PlaceFault> judge(Step step, Act act) {
    if (!isJudged(step, act)) {
      return Optional.empty();
    }
    List<PlaceFault> faults = act.deeds().stream().flatMap(d -> judge(step, d).stream()).toList();
    return faults.stream().filter(PlaceFault::isUnsafe).findFirst().or(() -> first(faults));
  }

  private static Optional<PlaceFault> first(List<PlaceFault> faults) {
    return faults.stream().findFirst();
  }

  private static boolean isJudged(Step step, Act act) {
    if (step.test() instanceof StepTest.FittingIs) {
      return true;
    }
    return step.test() instanceof StepTest.Ordered
        && act.deeds().stream()
            .flatMap(d -> d.told().stream())
            .flatMap(t -> t.order().stream())
            .anyMatch(o -> o instanceof Order.Work || o instanceof Order.Go);
  }

  private Optional<PlaceFault> judge(Step step, Deed deed) {
    Optional<Entry.OrderSaid> said = deed.told().map(Told::said).filter(s -> s.need() >= 0);
    if (said.isEmpty()) {
      return Optional.empty();
    }
    return isUnsafe(said.get()) ? Optional.of(unsafe(said.get())) : wrongSide(step, deed);
  }

  private static boolean isUnsafe(Entry.OrderSaid said) {
    return said.jet() || said.hurt() < said.need();
  }

  private static PlaceFault unsafe(Entry.OrderSaid said) {
    String what =
        said.jet() ? "Ordered into the jet" : "Ordered where a man is hurt before it is done";
    return new PlaceFault(true, said.t(), reading(said), what, false);
  }

  private Optional<PlaceFault> wrongSide(Step step, Deed deed) {
    Entry.OrderSaid said = deed.told().orElseThrow().said();
    Optional<Place> at = deed.moved().flatMap(m -> ship.place(m.at()));
    if (at.isEmpty() || step.place().isEmpty() || said.hurt() < 2 * said.need()) {
      return Optional.empty();
    }
    Step.Side side = at.get().isInside() ? Step.Side.LOCAL : Step.Side.REMOTE;
    boolean isOnlyWay = side == Step.Side.REMOTE && !isSafeInside(said.n());
    return side == step.place().get() || isOnlyWay
        ? Optional.empty()
        : Optional.of(
            new PlaceFault(
                false,
                said.t(),
                reading(said),
                "Worked at " + at.get().id() + ", " + words(side),
                false));
  }

  /** Whether somebody inside could have done it with time to spare. */
  private boolean isSafeInside(int n) {
    return log.all(Entry.Inside.class).anyMatch(i -> i.n() == n && i.hurt() >= 2 * i.need());
  }

  static String words(Step.Side side) {
    return switch (side) {
      case LOCAL -> "in the fire room";
      case REMOTE -> "outside the fire room";
    };
  }

  private static String reading(Entry.OrderSaid said) {
    if (said.jet()) {
      return "in a jet of steam";
    }
    String hurt =
        said.hurt() >= Entry.NO_HURT_TICKS
            ? "nobody is hurt there"
            : "a man there is hurt after " + Clock.seconds(said.hurt());
    return "needs " + Clock.seconds(said.need()) + ", " + hurt;
  }
}
