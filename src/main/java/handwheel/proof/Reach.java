package handwheel.proof;

import handwheel.casualty.Casualty;
import handwheel.casualty.Step;
import handwheel.casualty.StepTest;
import handwheel.casualty.Window;
import handwheel.diagnostics.Finding;
import handwheel.drill.Engine;
import handwheel.drill.Walks;
import handwheel.ship.Control;
import handwheel.ship.Fitting;
import handwheel.ship.Gauge;
import handwheel.ship.Place;
import handwheel.ship.Ship;
import handwheel.ship.Watchstander;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * Finds times that the shortest walk and work make impossible: the quickest man there can be, from
 * the nearest station, with nothing in his way. Whether a slow man can keep a time is shown by
 * playing.
 */
public final class Reach {
  private final Ship ship;
  private final Walks walks;
  private final List<Finding> findings = new ArrayList<>();

  private Reach(Ship ship) {
    this.ship = ship;
    this.walks = new Walks(ship);
  }

  /**
   * Checks the times of a script.
   *
   * @param casualty the script
   * @param ship its ship
   * @return what is wrong, in the order of the steps
   */
  public static List<Finding> of(Casualty casualty, Ship ship) {
    Reach reach = new Reach(ship);
    casualty.response().forEach(reach::step);
    return reach.findings;
  }

  private void step(Step step) {
    if (step.test() instanceof StepTest.FittingIs test) {
      step.done().ifPresent(d -> test.fittings().forEach(f -> worked(step, f, d)));
    } else if (step.test() instanceof StepTest.ReadProof proof) {
      step.within().ifPresent(w -> read(step, proof.gauge(), w));
    }
  }

  private void worked(Step step, String fitting, Window done) {
    List<Control> controls = ship.fitting(fitting).map(Fitting::controls).orElse(List.of());
    double leastS = least(man -> nearest(man, controls, step.place()));
    compare(step, "bring `" + fitting + "` there", leastS, done);
  }

  private double nearest(Watchstander man, List<Control> controls, Optional<Step.Side> side) {
    return controls.stream()
        .filter(c -> side.isEmpty() || isOn(side.get(), c.place()))
        .mapToDouble(c -> walks.workedS(man.at(), c))
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  private boolean isOn(Step.Side side, String place) {
    return ship.place(place).filter(Place::isInside).isPresent() == (side == Step.Side.LOCAL);
  }

  private void read(Step step, String gauge, Window within) {
    List<String> places = ship.gauge(gauge).map(Gauge::at).orElse(List.of());
    double leastS =
        least(
            man ->
                places.stream()
                    .mapToDouble(p -> walks.walkS(man.at(), p))
                    .min()
                    .orElse(Double.POSITIVE_INFINITY));
    compare(step, "read `" + gauge + "`", leastS, within);
  }

  private double least(ToDoubleFunction<Watchstander> needS) {
    return ship.watch().stream().mapToDouble(needS).min().orElse(Double.POSITIVE_INFINITY);
  }

  private void compare(Step step, String what, double leastS, Window window) {
    double allowedS = (double) window.ticks() / Engine.TICKS_PER_S;
    if (leastS > allowedS && Double.isFinite(leastS)) {
      findings.add(
          ProofId.TOO_FAR.at(
              step.grade().spot(),
              "step `"
                  + step.id()
                  + "`: to "
                  + what
                  + " takes the quickest man "
                  + seconds(leastS)
                  + " s from the nearest station; "
                  + seconds(allowedS)
                  + " s are allowed",
              "Allow more time."));
    }
  }

  private static String seconds(double s) {
    return new BigDecimal(s).setScale(1, RoundingMode.HALF_UP).stripTrailingZeros().toPlainString();
  }
}
