package handwheel.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import handwheel.units.Measure;
import handwheel.units.Unit;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Paths no reference run takes, each against a figure worked out by hand. */
class ByHandTest {
  private static final double ONE_INCH_M2 = StrictMath.PI / 4 * 0.0254 * 0.0254;

  /** Napier's rule: lb/s = area in2 x psia / 70, saturated steam, times the discharge of 0.85. */
  @Test
  void aSaturatedLeakFollowsNapiersRule() {
    Plant plant = at("100", Port.LEAK_SATURATED, ONE_INCH_M2);
    double napierLbPerS = 0.85 * StrictMath.PI / 4 * 614.696 / 70;
    assertThat(plant.value(Quantity.LEAK_SATURATED_FLOW) / 0.45359237)
        .isCloseTo(napierLbPerS, withPercentage(4));
  }

  /** 0.56695 A p / sqrt(433.81 T) with the outlet at 578.4 psig and 850 F: 2.085 kg/s. */
  @Test
  void aLeakBeforeTheStopBlowsWhateverTheStopDoes() {
    Plant plant = at("100", Port.LEAK_BEFORE_STOP, ONE_INCH_M2);
    assertThat(plant.value(Quantity.LEAK_BEFORE_STOP_FLOW)).isCloseTo(2.085, withPercentage(1));
    plant.set(Port.MAIN_STOP, 0);
    plant.evaluate();
    assertThat(plant.value(Quantity.LEAK_BEFORE_STOP_FLOW)).isGreaterThan(2);
    assertThat(plant.value(Quantity.SUPERHEATER_FLOW))
        .isCloseTo(plant.value(Quantity.LEAK_BEFORE_STOP_FLOW), within(1e-9));
    assertThat(plant.doseRatePerS(Zone.UPPER)).isLessThan(1e-4);
    Run.ticks(plant, 600);
    assertThat(plant.doseRatePerS(Zone.UPPER)).isGreaterThan(1e-3);
    assertThat(plant.doseRatePerS(Zone.OUTSIDE)).isZero();
  }

  @Test
  void theEmergencyPumpOnTheReserveTankFeedsColdAndDrainsIt() {
    Plant plant = Starts.plant("100");
    plant.set(Port.MAIN_FEED_PUMP, 0);
    plant.set(Port.EMERGENCY_FEED_PUMP, 1);
    plant.set(Port.EMERGENCY_FEED_SUCTION, 1);
    Run.ticks(plant, 600);
    assertThat(plant.value(Quantity.FEED_TEMPERATURE)).isCloseTo(300, within(0.01));
    double flow = plant.value(Quantity.FEED_FLOW);
    assertThat(flow).isBetween(5.0, 9.8 * 1.1);
    double kg = plant.value(Quantity.RESERVE_TANK_MASS);
    Run.ticks(plant, 20);
    assertThat(kg - plant.value(Quantity.RESERVE_TANK_MASS)).isGreaterThan(0.95 * flow);
  }

  @Test
  void theHandPumpFeedsOneSmallBurnerAtMost() {
    Plant plant = at("100", Port.FUEL_PUMP, 2);
    Run.ticks(plant, 1200);
    assertThat(plant.value(Quantity.FUEL_FLOW)).isLessThanOrEqualTo(0.1001);
  }

  @Test
  void theScrollDrainTakesATenthOfTheWaterASecond() {
    Plant plant = Starts.plant("100");
    plant.walk((name, value) -> name.equals("blower.1.water.mass") ? 50 : value);
    plant.set(Port.BLOWER_1_STOP, 0);
    plant.set(Port.BLOWER_1_SCROLL_DRAIN, 1);
    plant.evaluate();
    double n = plant.value(Quantity.BLOWER_1_SPEED);
    assertThat(plant.blower1.scrollWaterKg.dx).isCloseTo(-5 - 0.012 * n * n * 50, within(1e-9));
  }

  @Test
  void anIntakeFlapHalfShutHalvesTheAir() {
    Plant plant = Starts.plant("100");
    plant.evaluate();
    double air = plant.value(Quantity.BLOWER_1_AIR_FLOW);
    plant.set(Port.BLOWER_1_INTAKE_FLAP, 0.5);
    plant.evaluate();
    assertThat(plant.value(Quantity.BLOWER_1_AIR_FLOW)).isCloseTo(air / 2, within(1e-9));
  }

  @Test
  void aFouledStrainerLetsThePumpDrawAir() {
    Plant plant = at("50", Port.STRAINER, 0.2);
    Run.ticks(plant, 4000);
    assertThat(plant.value(Quantity.FUEL_AIR_IN_SUCTION)).isCloseTo(0.5, within(0.02));
  }

  /** At rated pressure the open bottom blow passes 4 kg/s, the surface blow 0.6. */
  @Test
  void theBlowsAddUp() {
    Plant plant = at("100", Port.BOTTOM_BLOW, 1);
    plant.set(Port.SURFACE_BLOW, 1);
    plant.evaluate();
    assertThat(plant.value(Quantity.DRUM_BLOW_FLOW)).isCloseTo(4.6, within(1e-6));
  }

  /** 100 ppm in 13.75 kg/s of feed bring 1.375 g/s of chloride. */
  @Test
  void aLeakingCondenserSaltsTheBoiler() {
    Plant plant = at("100", Port.FEED_CHLORIDE, 100e-6);
    double carriedKgPerS = 0.0005 * 12.39 * 30e-6;
    assertThat(plant.drum.chlorideKg.dx).isCloseTo(1.375e-3 - carriedKgPerS, within(1e-5));
  }

  @Test
  void theSecondTankIsDrawnWhenTheSuctionStandsOnIt() {
    Plant plant = at("100", Port.FUEL_SUCTION, 1);
    Run.ticks(plant, 200);
    assertThat(plant.value(Quantity.FUEL_TANK_1_MASS)).isEqualTo(15_000);
    assertThat(plant.value(Quantity.FUEL_TANK_2_MASS)).isCloseTo(15_000 - 9.92, within(0.02));
  }

  @Test
  void hotelSteamAndFuelHeaterComeOffTheDrum() {
    Plant plant = Starts.plant("100");
    plant.evaluate();
    double all = plant.value(Quantity.AUXILIARY_FLOW);
    double heater = plant.fuel.heaterKgPerS;
    plant.set(Port.HOTEL_STEAM, 0);
    plant.set(Port.FUEL_HEATER, 0);
    plant.evaluate();
    assertThat(all - plant.value(Quantity.AUXILIARY_FLOW)).isCloseTo(0.35 + heater, within(1e-6));
  }

  @Test
  void withoutTheBoosterTheMainPumpLosesItsSuction() {
    Plant plant = at("100", Port.BOOSTER_PUMP, 0);
    assertThat(plant.value(Quantity.FEED_FLOW)).isZero();
  }

  @Test
  void aSprayFromTheSuperheaterLineEndsWithItsTrip() {
    Plant plant = at("100", Port.OIL_SPRAY, 7.9e-6);
    plant.set(Port.OIL_SPRAY_PLACE, 1);
    plant.evaluate();
    assertThat(plant.value(Quantity.OIL_SPRAY_FLOW)).isGreaterThan(0.1);
    plant.set(Port.FUEL_TRIP_SATURATED, 0);
    plant.evaluate();
    assertThat(plant.value(Quantity.OIL_SPRAY_FLOW)).isGreaterThan(0.1);
    plant.set(Port.FUEL_TRIP_SUPERHEATER, 0);
    plant.evaluate();
    assertThat(plant.value(Quantity.OIL_SPRAY_FLOW)).isZero();
  }

  @Test
  void anOpenDoorLetsMoreOutAtTheTop() {
    Plant plant = at("100", Port.EXHAUST_FAN, 0);
    assertThat(plant.space.topKgPerS).isCloseTo(3, within(1e-9));
    plant.set(Port.UPPER_DOOR, 1);
    plant.evaluate();
    assertThat(plant.space.topKgPerS).isCloseTo(9, within(1e-9));
  }

  @Test
  void waterRisingOutOfTheGlassIsToldOnce() {
    Plant plant = at("50", Port.FEED_CHECK, 1);
    List<String> told = new ArrayList<>();
    Run.ticks(plant, 4000, new HighWater(told));
    assertThat(plant.value(Quantity.DRUM_LEVEL)).isGreaterThan(7 * 0.0254);
    assertThat(told).hasSize(1);
  }

  /** A boiler full of water takes no more: its steam space is never negative. */
  @Test
  void aBoilerFullOfWaterStopsTheFeedPump() {
    Plant plant = at("50", Port.FEED_CHECK, 1);
    Run.ticks(plant, 24_000);
    assertThat(plant.drum.waterM3.x).isBetween(9.6, 9.9);
    assertThat(plant.drum.backPressurePa).isGreaterThan(1e6);
  }

  @Test
  void aFailedSuperheaterIsToldOnce() {
    Plant plant = Starts.plant("100");
    plant.walk((name, value) -> name.equals("superheater.damage") ? 0.999999 : value);
    plant.walk((name, value) -> name.equals("superheater.metal.temperature") ? 1150 : value);
    List<String> told = new ArrayList<>();
    Run.ticks(plant, 40, new HighWater(told));
    assertThat(told).containsExactly("SUPERHEATER_DAMAGE");
  }

  /** Larson-Miller, C = 20, 20,500 K: 850 C lasts about a minute, 650 C about a week. */
  @Test
  void creepLastsAsTheParameterSays() {
    assertThat(1 / Physics.creepPerS(20_500, Unit.CELSIUS.toSi(850))).isCloseTo(64, within(3.0));
    assertThat(1 / Physics.creepPerS(20_500, Unit.CELSIUS.toSi(650)) / 3600)
        .isCloseTo(160, within(5.0));
  }

  @Test
  void aTrippedBlowerRunsAgainOnlyAfterStopAndReset() {
    Plant plant = Starts.plant("100");
    plant.walk((name, value) -> name.equals("blower.1.tripped") ? 1 : value);
    plant.set(Port.BLOWER_1_RESET, 1);
    Run.ticks(plant, 1);
    assertThat(plant.value(Quantity.BLOWER_1_TRIPPED)).isEqualTo(1);
    plant.set(Port.BLOWER_1_STOP, 0);
    Run.ticks(plant, 1);
    assertThat(plant.value(Quantity.BLOWER_1_TRIPPED)).isZero();
    assertThat(plant.value(Quantity.BLOWER_1_RUNNING)).isZero();
    plant.set(Port.BLOWER_1_STOP, 1);
    Run.ticks(plant, 1);
    assertThat(plant.value(Quantity.BLOWER_1_RUNNING)).isEqualTo(1);
  }

  @Test
  void eductorsPumpTheBilgeDownToTheirSuction() {
    Plant plant = at("25", Port.EDUCTORS, 2);
    plant.walk((name, value) -> name.equals("bilge.volume") ? 10 : value);
    Run.ticks(plant, 6000);
    assertThat(plant.value(Quantity.BILGE_DEPTH)).isCloseTo(0.05, within(0.001));
  }

  @Test
  void aQuantityTakesGaugeAndAbsolutePressure() {
    assertThat(Quantity.DRUM_PRESSURE.in(Unit.PSIG, Physics.RATED_PA)).isCloseTo(600, within(1e-9));
    var psig = Measure.parse("600 psig").orElseThrow();
    assertThat(Quantity.DRUM_PRESSURE.si(psig).orElseThrow())
        .isCloseTo(Physics.RATED_PA, within(1e-6));
    assertThat(Quantity.DRUM_LEVEL.si(psig)).isEmpty();
  }

  private static Plant at(String start, Port port, double position) {
    Plant plant = Starts.plant(start);
    plant.set(port, position);
    plant.evaluate();
    return plant;
  }

  /** Writes down limits and high water. */
  private static final class HighWater extends QuietEvents {
    private final List<String> told;

    HighWater(List<String> told) {
      this.told = told;
    }

    @Override
    public void waterOutOfSightHigh() {
      told.add("high");
    }

    @Override
    public void limitReached(Limit limit) {
      told.add(limit.name());
    }
  }
}
