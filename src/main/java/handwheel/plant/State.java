package handwheel.plant;

/**
 * One continuous state: its value, its rate of change and its own decay rate. {@link #advance}
 * takes one step of exponential Euler on the diagonal, then holds the value inside its limits.
 * States that only decay towards zero are set to zero below 1e-12, so that no denormal number ever
 * slows a step.
 *
 * <p>Source: exponential integrators, e.g. M. Hochbruck and A. Ostermann, Acta Numerica 19 (2010),
 * with a diagonal linear part; decay rate 0 is plain Euler, which keeps mass and energy exact.
 */
final class State {
  private static final double NOTHING = 1e-12;

  final String name;

  /** Value, in the unit the owner's field name ends in. */
  double x;

  /** Rate of change, unit a second. */
  double dx;

  /** Decay rate, 1/s: how fast the rate falls as the value rises. */
  double decayPerS;

  /** Whether a condition need not name this state; it is zero then. */
  final boolean mayBeAbsent;

  private final double min;
  private final double max;
  private final double nothingBelow;
  private double meanOf;
  private double mean = 1;

  private State(String name, double min, double max, double nothingBelow, boolean mayBeAbsent) {
    this.name = name;
    this.mayBeAbsent = mayBeAbsent;
    this.min = min;
    this.max = max;
    this.nothingBelow = nothingBelow;
  }

  static State free(String name) {
    return between(name, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
  }

  static State atLeast(double min, String name) {
    return between(name, min, Double.POSITIVE_INFINITY);
  }

  static State between(String name, double min, double max) {
    return new State(name, min, max, Double.NEGATIVE_INFINITY, false);
  }

  /** A state that never is negative and dies away to nothing. */
  static State dying(String name) {
    return new State(name, 0, Double.POSITIVE_INFINITY, NOTHING, false);
  }

  /** A state that dies away to nothing and is nothing in a condition that does not name it. */
  static State absent(String name) {
    return new State(name, 0, Double.POSITIVE_INFINITY, NOTHING, true);
  }

  /** A share that dies away to nothing. */
  static State dyingShare(String name) {
    return new State(name, 0, 1, NOTHING, false);
  }

  void advance() {
    double z = decayPerS * Plant.TICK_S;
    if (z != meanOf) {
      meanOf = z;
      mean = Decay.mean(z);
    }
    double next = x + dx * Plant.TICK_S * mean;
    if (next < min) {
      next = min;
    } else if (next > max) {
      next = max;
    }
    x = next < nothingBelow ? 0 : next;
  }

  void walk(StateWalker walker) {
    x = walker.visit(name, x);
  }
}
