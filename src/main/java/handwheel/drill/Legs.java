package handwheel.drill;

import handwheel.plant.StateWalker;
import handwheel.ship.Place;

/** Where a person is and how he gets on. Until he arrives at the next place he is at the last. */
final class Legs {
  private final Pace pace;
  private Place at;
  private Roads.Route route = new Roads.Route(java.util.List.of(), 0);
  private int leg;
  private long leftTicks;
  private long goneTicks;

  Legs(Place at, Pace pace) {
    this.at = at;
    this.pace = pace;
  }

  Place at() {
    return at;
  }

  boolean isWalking() {
    return leg < route.legs().size();
  }

  /** Returns the ticks he needs back to the place he left last; 0 standing. */
  long backTicks() {
    return isWalking() ? goneTicks : 0;
  }

  /** Sets out. */
  void setOut(Roads.Route newRoute) {
    route = newRoute;
    leg = 0;
    startLeg();
  }

  /** Turns back to the place he left last. */
  void turnBack() {
    route = new Roads.Route(java.util.List.of(), 0);
    leg = 0;
    goneTicks = 0;
  }

  /** Walks for one tick; returns whether he has just come to the end of his route. */
  boolean tick() {
    if (!isWalking()) {
      return false;
    }
    goneTicks++;
    leftTicks--;
    if (leftTicks > 0) {
      return false;
    }
    at = route.legs().get(leg).to();
    leg++;
    startLeg();
    return !isWalking();
  }

  private void startLeg() {
    goneTicks = 0;
    if (isWalking()) {
      leftTicks = Math.max(1, Engine.ticks(pace.seconds(route.legs().get(leg))));
    }
  }

  void walk(PersonNames.OfLegs names, java.util.List<Place> places, StateWalker walker) {
    walker.visit(names.place(), places.indexOf(at));
    walker.visit(names.leg(), leg);
    walker.visit(names.left(), isWalking() ? leftTicks : 0);
    walker.visit(names.gone(), goneTicks);
  }
}
