package handwheel.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sizes a ship may have that the reference plant has not: a stack that draws, a pump's run-out. */
class DraftAndRunOutTest {
  /**
   * 1.20 and 0.60 kg/m3 over 30 m: 177 Pa. US handbooks: 0.256 h p (1/To - 1/Tg), in ft and psi.
   */
  @Test
  void aStackDrawsByTheWeightOfItsGas() {
    assertThat(AirPath.draftPa(30, 294.3, 588.6)).isCloseTo(176.5, within(0.5));
    double feet = 100;
    double inchWater = 0.256 * feet * 29.92 * (1 / 530.0 - 1 / 960.0);
    assertThat(AirPath.draftPa(feet * 0.3048, 530 / 1.8, 960 / 1.8) / 249.089)
        .isCloseTo(inchWater, withPercentage(1));
  }

  @Test
  void theReferencePlantHasNoDraft() {
    Plant plant = Starts.plant("100");
    Run.ticks(plant, 400);
    assertThat(plant.value(Quantity.STACK_DRAFT)).isZero();
  }

  /**
   * Blowers stopped, fires out: the hot boiler draws a little air through the idle wheels. By the
   * root law 37 Pa would move 1.0 kg/s through 8 registers of 0.0273, a gas path of 6.5 and two
   * idle wheels of 8.8 kg/s at 4,000 Pa; the plant's roots are smoothed below 60 and 120 Pa.
   */
  @Test
  void withTheBlowersStoppedTheStackPurgesSlowly() {
    Plant still = stopped(Starts.plant("50"));
    Plant draws = stopped(plant("50", "stack.height", 14));
    Run.ticks(still, 2400);
    Run.ticks(draws, 2400);
    assertThat(still.value(Quantity.AIR_FLOW)).isLessThan(0.05);
    assertThat(draws.value(Quantity.STACK_DRAFT)).isBetween(20.0, 75.0);
    assertThat(draws.value(Quantity.AIR_FLOW)).isBetween(0.2, 1.0);
    assertThat(draws.value(Quantity.FURNACE_PRESSURE)).isNegative();
    assertThat(draws.value(Quantity.AIR_BOX_PRESSURE)).isNegative();
    double out = draws.value(Quantity.BLOWER_1_AIR_FLOW) + draws.value(Quantity.BLOWER_2_AIR_FLOW);
    assertThat(out).isCloseTo(draws.value(Quantity.AIR_FLOW), withPercentage(1));
  }

  private static Plant stopped(Plant plant) {
    plant.set(Port.BLOWER_1_STOP, 0);
    plant.set(Port.BLOWER_2_STOP, 0);
    plant.set(Port.FUEL_TRIP_SATURATED, 0);
    plant.set(Port.FUEL_TRIP_SUPERHEATER, 0);
    plant.set(Port.MAIN_STOP, 0);
    plant.walk((name, value) -> name.matches("blower.[12].speed") ? 0 : value);
    return plant;
  }

  /** With the blowers up the draft is lost in their pressure: the ship stays where she was. */
  @ParameterizedTest
  @CsvSource({"100", "50"})
  void aRunningBoilerHardlyFeelsTheStack(String start) {
    Plant plant = plant(start, "stack.height", 14);
    plant.evaluate();
    double air = plant.value(Quantity.AIR_FLOW);
    Run.ticks(plant, 1200);
    assertThat(plant.value(Quantity.AIR_FLOW)).isCloseTo(air, withPercentage(1));
    assertThat(plant.value(Quantity.DRUM_PRESSURE))
        .isCloseTo(Physics.RATED_PA, within(3 * Plant.PSI));
  }

  @ParameterizedTest
  @CsvSource({"10", "14"})
  void upToTheRatedFlowThereIsNoShock(double square) {
    assertThat(FeedSystem.beyondRated(square, 5000, 1e5, 14)).isEqualTo(square);
  }

  /** The head the pump has left must be what check and line take. */
  @Test
  void beyondItTheHeadsBalance() {
    double q = FeedSystem.beyondRated(20, 5000, 1e5, 14);
    assertThat(q).isBetween(14.0, 20.0);
    assertThat(5000 * q * q + 1e5 * (q - 14) * (q - 14)).isCloseTo(5000 * 400, within(1e-3));
  }

  /** Affinity laws: at half speed and a quarter of all heads every flow is half. */
  @ParameterizedTest
  @CsvSource({"12", "18", "25"})
  void theRunOutFollowsTheAffinityLaws(double square) {
    double full = FeedSystem.beyondRated(square, 5000, 1e5, 14);
    assertThat(FeedSystem.beyondRated(square / 2, 5000, 1e5, 7)).isCloseTo(full / 2, within(1e-9));
  }

  /** The fixed limit is the reference; with the ship's shock loss the pump runs out near it. */
  @Test
  void theMainPumpRunsOut() {
    assertThat(wideOpen(Starts.plant("100"))).isEqualTo(17);
    assertThat(wideOpen(plant("100", "feed.main-pump-shock-loss", 110_000)))
        .isCloseTo(17, within(0.3));
  }

  private static double wideOpen(Plant plant) {
    plant.set(Port.FEED_CHECK, 1);
    plant.evaluate();
    return plant.value(Quantity.FEED_MAIN_PUMP_FLOW);
  }

  private static Plant plant(String start, String size, double value) {
    Plant plant = Plant.of(PlantNumbers.usual().with(new TreeMap<>(Map.of(size, value))));
    plant.restore(Starts.states(start), Starts.ports(start));
    return plant;
  }
}
