package handwheel.drill;

import handwheel.ship.Place;
import handwheel.ship.Ship;
import handwheel.ship.Way;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * The ways of a ship. The quickest route is found by Dijkstra's algorithm (Numerische Mathematik 1
 * (1959) 269-271); ties go to the place that stands first in the ship file.
 */
final class Roads {
  private final List<Place> places;
  private final List<List<Leg>> from = new ArrayList<>();

  /** One way walked in one direction. */
  record Leg(Place to, Way way, boolean isUp) {}

  /** A route and how long it takes at somebody's pace. */
  record Route(List<Leg> legs, double seconds) {
    Place end(Place start) {
      return legs.isEmpty() ? start : legs.get(legs.size() - 1).to();
    }
  }

  Roads(Ship ship) {
    places = ship.places();
    for (Place p : places) {
      List<Leg> legs = new ArrayList<>();
      for (Way w : ship.ways()) {
        if (w.from().equals(p.id())) {
          legs.add(leg(ship, p, w.to(), w));
        } else if (w.to().equals(p.id())) {
          legs.add(leg(ship, p, w.from(), w));
        }
      }
      from.add(List.copyOf(legs));
    }
  }

  private static Leg leg(Ship ship, Place start, String to, Way way) {
    Place end = ship.place(to).orElseThrow();
    return new Leg(end, way, end.heightM() > start.heightM());
  }

  /**
   * Finds the quickest route to the nearest place that will do. Who is outside the fire room does
   * not go through it to another place outside, be that the shorter way.
   *
   * @param start where he stands; may itself be blocked
   * @param goal where he may stop
   * @param isBlocked where he will not pass
   * @param pace how fast he is
   */
  Optional<Route> quickest(
      Place start, Predicate<Place> goal, Predicate<Place> isBlocked, Pace pace) {
    if (!start.isInside()) {
      Predicate<Place> isThrough = p -> p.isInside() && !goal.test(p);
      Optional<Route> around = search(start, goal, isBlocked.or(isThrough), pace);
      if (around.isPresent()) {
        return around;
      }
    }
    return search(start, goal, isBlocked, pace);
  }

  private Optional<Route> search(
      Place start, Predicate<Place> goal, Predicate<Place> isBlocked, Pace pace) {
    int n = places.size();
    double[] best = new double[n];
    java.util.Arrays.fill(best, Double.POSITIVE_INFINITY);
    boolean[] done = new boolean[n];
    int[] before = new int[n];
    Leg[] by = new Leg[n];
    best[places.indexOf(start)] = 0;
    for (int at = nearest(best, done); at >= 0; at = nearest(best, done)) {
      done[at] = true;
      if (goal.test(places.get(at))) {
        return Optional.of(new Route(legs(at, places.indexOf(start), before, by), best[at]));
      }
      for (Leg leg : from.get(at)) {
        int to = places.indexOf(leg.to());
        double s = best[at] + pace.seconds(leg);
        if (!isBlocked.test(leg.to()) && s < best[to]) {
          best[to] = s;
          before[to] = at;
          by[to] = leg;
        }
      }
    }
    return Optional.empty();
  }

  private static int nearest(double[] best, boolean[] done) {
    int at = -1;
    for (int i = 0; i < best.length; i++) {
      if (!done[i] && best[i] < Double.POSITIVE_INFINITY && (at < 0 || best[i] < best[at])) {
        at = i;
      }
    }
    return at;
  }

  private static List<Leg> legs(int end, int start, int[] before, Leg[] by) {
    List<Leg> legs = new ArrayList<>();
    for (int i = end; i != start; i = before[i]) {
      legs.add(0, by[i]);
    }
    return List.copyOf(legs);
  }
}
