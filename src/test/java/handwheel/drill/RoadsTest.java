package handwheel.drill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import handwheel.plant.PlantNumbers;
import handwheel.plant.Zone;
import handwheel.ship.Place;
import handwheel.ship.Ship;
import handwheel.ship.Way;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Walking: routes, and times at published speeds. */
class RoadsTest {
  private static final Ship SHIP =
      new Ship(
          "s",
          "S",
          "",
          PlantNumbers.usual(),
          List.of(place("a", 0), place("b", 0), place("c", 4), place("far", 0)),
          List.of(
              new Way("a", "b", 40, 0),
              new Way("b", "c", 0, 4),
              new Way("a", "c", 60, 0),
              new Way("c", "far", 1, 0)),
          List.of(),
          List.of(),
          List.of(),
          List.of(),
          List.of());

  private static Place place(String id, double heightM) {
    return new Place(id, id, Zone.LOWER, heightM, List.of(), Optional.empty());
  }

  private static Place at(String id) {
    return SHIP.place(id).orElseThrow();
  }

  /** Fastest and slowest crew of IMO MSC.1/Circ.1533 annex 3 tables 3.4 and 3.5 (male crew). */
  @Test
  void walkingTakesThePublishedTimes() {
    Roads roads = new Roads(SHIP);
    assertThat(seconds(roads, "a", "b", Pace.slowest())).isCloseTo(40 / 1.11, within(1e-9));
    assertThat(seconds(roads, "a", "b", Pace.fastest())).isCloseTo(40 / 1.85, within(1e-9));
    assertThat(seconds(roads, "b", "c", Pace.slowest())).isCloseTo(4 / 0.50, within(1e-9));
    assertThat(seconds(roads, "c", "b", Pace.slowest())).isCloseTo(4 / 0.76, within(1e-9));
    assertThat(seconds(roads, "c", "b", Pace.fastest())).isCloseTo(4 / 1.26, within(1e-9));
  }

  @Test
  void theQuickestWayIsTakenAndABlockedPlaceIsWalkedAround() {
    Roads roads = new Roads(SHIP);
    assertThat(route(roads, "a", "c", false).legs()).hasSize(2);
    assertThat(route(roads, "a", "c", true).legs()).hasSize(1);
    assertThat(roads.quickest(at("a"), p -> p.id().equals("far"), p -> p.id().equals("c"), PACE))
        .isEmpty();
  }

  private static final Pace PACE = Pace.at(0.5, 0.5, 0.5);

  private static Roads.Route route(Roads roads, String from, String to, boolean isBlocked) {
    return roads
        .quickest(at(from), p -> p.id().equals(to), p -> isBlocked && p.id().equals("b"), PACE)
        .orElseThrow();
  }

  private static double seconds(Roads roads, String from, String to, Pace pace) {
    return roads
        .quickest(at(from), p -> p.id().equals(to), p -> false, pace)
        .orElseThrow()
        .seconds();
  }
}
