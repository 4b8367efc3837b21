package handwheel.drill;

import handwheel.plant.StateWalker;
import handwheel.ship.Order;
import org.jspecify.annotations.Nullable;

/** One order in the hands of one man. */
final class Job {
  /** Where a job is. */
  enum Stage {
    /** Heard, not yet begun. */
    HEARING(0),
    /** Repeated back, waiting for the go-ahead. */
    AWAITING(1),
    /** On his way. */
    WALKING(2),
    /** Hand on it, or eye on the gauge. */
    WORKING(3);

    private final int code;

    Stage(int code) {
      this.code = code;
    }
  }

  final int n;
  final Order order;

  /** Whether he repeats after he has done it. */
  final boolean isDoneFirst;

  /** Whether he understood something else than was said. */
  final boolean isWrong;

  /** Whether he has repeated it back. */
  boolean isRepeated;

  Stage stage = Stage.HEARING;
  long untilTick;

  /** Which of the order's fittings he is at. */
  int fitting;

  @Nullable FittingWork work;

  Job(int n, Order order, boolean isDoneFirst, boolean isWrong, long untilTick) {
    this.n = n;
    this.order = order;
    this.isDoneFirst = isDoneFirst;
    this.isWrong = isWrong;
    this.untilTick = untilTick;
  }

  void walk(PersonNames.OfJob names, StateWalker walker) {
    walker.visit(names.n(), n);
    walker.visit(names.stage(), stage.code);
    walker.visit(names.until(), untilTick);
    walker.visit(names.fitting(), fitting);
  }
}
