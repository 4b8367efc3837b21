package handwheel.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

/**
 * Mass and energy of the boiler against the flows across its boundary, first law of thermodynamics;
 * one minute of hard transients.
 */
class ConservationTest {
  @Test
  void aLoadStepConserves() {
    check("50", plant -> plant.set(Port.THROTTLE_ORDERED, 1));
  }

  @Test
  void lostFeedConserves() {
    check("100", plant -> plant.set(Port.MAIN_FEED_PUMP, 0));
  }

  @Test
  void aLeakWithTrippedFiresConserves() {
    check(
        "100",
        plant -> {
          plant.set(Port.LEAK_MAIN_RUN, 5.067e-4);
          plant.set(Port.FUEL_TRIP_SATURATED, 0);
          plant.set(Port.FUEL_TRIP_SUPERHEATER, 0);
          plant.set(Port.MAIN_STOP, 0.3);
        });
  }

  @Test
  void blowingDownAndVentingConserves() {
    check(
        "100",
        plant -> {
          plant.set(Port.BOTTOM_BLOW, 1);
          plant.set(Port.SURFACE_BLOW, 1);
          plant.set(Port.DRUM_VENT, 1);
          plant.set(Port.LEAK_SATURATED, 1e-4);
          plant.set(Port.LEAK_BEFORE_STOP, 1e-4);
        });
  }

  private static void check(String start, Consumer<Plant> casualty) {
    Plant plant = Starts.plant(start);
    casualty.accept(plant);
    plant.evaluate();
    double kg = plant.drum.massKg();
    double joule = plant.drum.energyJ();
    double flowKg = 0;
    double flowJ = 0;
    for (int i = 0; i < 1200; i++) {
      plant.evaluate();
      flowKg += massKgPerS(plant) * Plant.TICK_S;
      flowJ += heatW(plant) * Plant.TICK_S;
      plant.applyRules(PlantEvents.NONE);
      plant.advance();
    }
    plant.evaluate();
    assertThat(plant.drum.massKg() - kg).isCloseTo(flowKg, within(1e-5 * kg));
    assertThat(plant.drum.energyJ() - joule).isCloseTo(flowJ, within(1e-5 * joule));
    assertThat(Math.abs(flowKg) + Math.abs(flowJ) / 1e6).isGreaterThan(1);
  }

  private static double massKgPerS(Plant p) {
    return p.feed.flowKgPerS - p.drum.steamKgPerS - p.drum.blowKgPerS - p.drum.tubeKgPerS;
  }

  private static double heatW(Plant p) {
    SteamDrum d = p.drum;
    double wetJ = d.carryOver * d.evaporationJPerKg * p.line.superheaterKgPerS;
    return p.gas.evaporationW
        + p.gas.economizerW
        + p.feed.flowKgPerS * p.feed.enthalpyJPerKg
        - d.steamKgPerS * d.sat.steamEnthalpyJPerKg
        + wetJ
        - (d.blowKgPerS + d.tubeKgPerS) * d.sat.waterEnthalpyJPerKg;
  }
}
