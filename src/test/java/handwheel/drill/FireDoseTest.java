package handwheel.drill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import handwheel.plant.Plant;
import handwheel.plant.Starts;
import handwheel.plant.Zone;
import handwheel.reader.ShippedFiles;
import handwheel.ship.Place;
import handwheel.ship.Ship;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What an oil fire at the saturated front does to the watch. */
class FireDoseTest {
  private static final Ship SHIP = ShippedFiles.ship().value().orElseThrow();

  /** 1 MW at 2 m is 6 kW/m2, pain after 7.4 s; at 5 m below the threshold of 2.5 kW/m2. */
  @Test
  void aFireBurnsWhoStandsBesideIt() {
    Scene scene = scene(Map.of("fire.heat", 1e6));
    assertThat(scene.doseRatePerS(place("saturated-front"))).isCloseTo(1 / 7.4, within(0.005));
    assertThat(scene.doseRatePerS(place("gauge-board"))).isLessThan(1e-3);
    assertThat(scene.doseRatePerS(place("lower-passage"))).isZero();
  }

  /** 8 MW at 5 m is 7.6 kW/m2; places not near the fire feel the air only. */
  @Test
  void aBigFireBurnsTheNeighboursToo() {
    Scene scene = scene(Map.of("fire.heat", 8e6));
    double near = scene.doseRatePerS(place("gauge-board"));
    assertThat(near).isCloseTo(1 / 5.35, within(0.005));
    assertThat(scene.doseRatePerS(place("saturated-front"))).isGreaterThan(5 * near);
    assertThat(scene.doseRatePerS(place("feed-station"))).isLessThan(1e-3);
  }

  /** Two doses stand side by side: the higher one counts, they are not added (ISO 13571). */
  @Test
  void gasAndHeatAreNotAddedUp() {
    Scene scene = scene(Map.of("space.upper.carbon-monoxide", 0.01, "fire.heat", 1e6));
    Place check = place("feed-check-grating");
    double gas = scene.gasDoseRatePerS(check);
    assertThat(gas).isGreaterThan(0.002);
    Person person = person("checkman", check);
    person.breathe(scene);
    assertThat(person.dose()).isCloseTo(gas / Engine.TICKS_PER_S, within(1e-12));
    assertThat(person.doseAfter(10, check, scene))
        .isCloseTo(gas * (10 + 1.0 / Engine.TICKS_PER_S), within(1e-9));
    double heat = scene.doseRatePerS(place("saturated-front"));
    assertThat(person.doseAfter(10, place("saturated-front"), scene))
        .isCloseTo(10 * heat + scene.plant.doseRatePerS(Zone.UPPER) / 20, within(1e-6));
  }

  private static Person person(String id, Place at) {
    return new Person(SHIP.watchstander(id).orElseThrow(), at, Pace.slowest(), new SplitMix64(1));
  }

  private static Place place(String id) {
    return SHIP.place(id).orElseThrow();
  }

  private static Scene scene(Map<String, Double> changes) {
    Plant plant = Starts.plant("50");
    plant.walk((name, value) -> changes.getOrDefault(name, value));
    plant.evaluate();
    return new Scene(SHIP, plant, e -> {});
  }
}
