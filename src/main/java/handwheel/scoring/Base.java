package handwheel.scoring;

import handwheel.casualty.Step;
import java.util.Optional;

/**
 * What one way of doing a step costs, its order left aside.
 *
 * @param step the step
 * @param act the way it was done
 * @param place where it was done wrongly
 * @param late by how much it came late
 * @param isMisheard whether an earlier order for it was repeated wrong and not caught
 */
record Base(
    Step step, Act act, Optional<PlaceFault> place, Optional<Late> late, boolean isMisheard) {
  int placePoints() {
    return place.map(p -> p.lostOf(step.grade().points())).orElse(0);
  }

  /** One point a second begun, as far as the place left any. */
  int latePoints() {
    return late.map(l -> Math.min(l.seconds(), step.grade().points() - placePoints())).orElse(0);
  }

  int points() {
    return placePoints() + latePoints();
  }

  /** What is left to lose for the order. */
  int left() {
    return step.grade().points() - points();
  }
}
