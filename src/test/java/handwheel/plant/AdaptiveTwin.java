package handwheel.plant;

import handwheel.water.SaturationTable;
import java.util.Arrays;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.ClassicalRungeKuttaIntegrator;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;

/**
 * The same plant beside another one, moved on by a library's adaptive integrator in place of the
 * plant's own step: Dormand and Prince's method of order 8 with error estimates of orders 5 and 3,
 * Hipparchus. Its rates are those of {@link Plant#evaluate}. Ports, flags and timers are those of
 * the plant it runs beside, held over each tick; its continuous states are its own from the first
 * tick to the last. Only what a rule changes at once (vapour and air of an explosion) is taken
 * over.
 *
 * <p>Source: E. Hairer, S. P. Norsett and G. Wanner, Solving Ordinary Differential Equations I,
 * second edition (1993), code DOP853 (value from memory); the library is an implementation of it.
 */
public final class AdaptiveTwin implements OrdinaryDifferentialEquation {
  private static final double RELATIVE = 1e-8;
  private static final double BEYOND = 1e300;
  private static final int MOST_EVALUATIONS = 1500;
  private static final int SLIDING_TICKS = 20;
  private static final double SLIDING_STEP_S = 1e-3;

  private final Plant twin;
  private final State[] states;
  private final double[] low;
  private final double[] high;
  private final double[] leader;
  private final DormandPrince853Integrator integrator;
  private final ClassicalRungeKuttaIntegrator sliding =
      new ClassicalRungeKuttaIntegrator(SLIDING_STEP_S);
  private double[] y;
  private double timeS;
  private boolean isStarted;
  private int slides;
  private int slidTicks;

  /** Makes a twin that takes its first state from the first plant shown to it. */
  public AdaptiveTwin(PlantNumbers numbers) {
    twin = Plant.of(numbers, SaturationTable.standard());
    states = twin.continuous().toArray(State[]::new);
    low = limits(-BEYOND);
    high = limits(BEYOND);
    leader = new double[states.length];
    y = new double[states.length];
    double[] absolute = new double[states.length];
    double[] relative = new double[states.length];
    Arrays.fill(relative, RELATIVE);
    for (int i = 0; i < states.length; i++) {
      absolute[i] = absolute(states[i].name);
    }
    integrator = new DormandPrince853Integrator(1e-12, Plant.TICK_S, absolute, relative);
    integrator.setInitialStepSize(Plant.TICK_S);
    integrator.setMaxEvaluations(MOST_EVALUATIONS);
  }

  /** Smallest error that matters: 1 mPa, 0.1 uK, else 1e-10 of the state's own unit. */
  private static double absolute(String name) {
    return name.endsWith("pressure") ? 1e-3 : name.endsWith("temperature") ? 1e-7 : 1e-10;
  }

  /** Finds the limits the plant holds its states to by stepping from far outside. */
  private double[] limits(double from) {
    double[] limits = new double[states.length];
    for (int i = 0; i < states.length; i++) {
      states[i].x = from;
      states[i].dx = 0;
      states[i].advance();
      limits[i] = states[i].x;
    }
    return limits;
  }

  /**
   * Takes over ports and flags of a plant just evaluated and evaluates its own states under them.
   *
   * @param plant the plant it runs beside
   * @return the twin, evaluated
   */
  public Plant beside(Plant plant) {
    int n = states.length;
    int[] index = {0};
    double[] all = new double[n + 500];
    plant.walk(
        (name, value) -> {
          all[index[0]++] = value;
          return value;
        });
    System.arraycopy(all, 0, leader, 0, n);
    if (!isStarted) {
      isStarted = true;
      System.arraycopy(all, 0, y, 0, n);
    }
    index[0] = 0;
    twin.walk((name, value) -> index[0]++ < n ? value : all[index[0] - 1]);
    rates(y);
    return twin;
  }

  /**
   * Takes over what the rules changed at once and moves on by one tick.
   *
   * @param plant the plant it runs beside, after its rules
   */
  public void advance(Plant plant) {
    int[] index = {0};
    plant.walk(
        (name, value) -> {
          int i = index[0]++;
          if (i < states.length && value != leader[i]) {
            y[i] = value;
          }
          return value;
        });
    double end = timeS + Plant.TICK_S;
    y = step(new ODEState(timeS, y), end);
    timeS = end;
    for (int i = 0; i < y.length; i++) {
      y[i] = Curve.clip(y[i], low[i], high[i]);
    }
  }

  /**
   * Steps adaptively; where the rates jump back and forth across a switch, such as the drum at the
   * very pressure of the other source of auxiliary steam, no adaptive method arrives, and the path
   * along the switch is followed in steps of a millisecond for a second.
   */
  private double[] step(ODEState from, double end) {
    if (slides == 0) {
      try {
        return integrator.integrate(this, from, end).getPrimaryState();
      } catch (MathIllegalStateException e) {
        slides = SLIDING_TICKS;
      }
    }
    slides--;
    slidTicks++;
    return sliding.integrate(this, from, end).getPrimaryState();
  }

  /**
   * Tells how long the twin had to follow a switch in small steps.
   *
   * @return ticks since the start
   */
  public int slidTicks() {
    return slidTicks;
  }

  @Override
  public int getDimension() {
    return states.length;
  }

  @Override
  public double[] computeDerivatives(double t, double[] state) {
    rates(state);
    double[] rates = new double[states.length];
    for (int i = 0; i < rates.length; i++) {
      double dx = states[i].dx;
      boolean isHeld = (state[i] <= low[i] && dx < 0) || (state[i] >= high[i] && dx > 0);
      rates[i] = isHeld ? 0 : dx;
    }
    return rates;
  }

  private void rates(double[] state) {
    for (int i = 0; i < states.length; i++) {
      states[i].x = Curve.clip(state[i], low[i], high[i]);
    }
    twin.evaluate();
  }
}
