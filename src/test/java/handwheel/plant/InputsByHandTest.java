package handwheel.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;

/** Inputs neither a reference run nor a probe moves, each against a figure worked out by hand. */
class InputsByHandTest {
  /** Flow goes with the opening; a valve half open leaves a quarter of the pressure behind it. */
  @Test
  void aHeaderValveHalfShutHalvesItsFurnacesOil() {
    Plant plant = Starts.plant("100");
    plant.evaluate();
    double oil = plant.value(Quantity.BURNER_S1_FUEL_FLOW);
    double other = plant.value(Quantity.BURNER_H1_FUEL_FLOW);
    plant.set(Port.HEADER_VALVE_SATURATED, 0.5);
    plant.evaluate();
    assertThat(plant.value(Quantity.BURNER_S1_FUEL_FLOW)).isCloseTo(oil / 2, within(1e-12));
    assertThat(plant.value(Quantity.BURNER_H1_FUEL_FLOW)).isEqualTo(other);
    assertThat(plant.value(Quantity.FUEL_BURNER_LINE_SATURATED_PRESSURE))
        .isCloseTo(plant.value(Quantity.FUEL_HEADER_PRESSURE) / 4, within(1e-6));
  }

  /**
   * Its boiler's tubes pass sqrt(4.83e-5 x 21.32 x 180,000) = 13.615 kg/s at that difference,
   * 20,000 Pa of 200,000 being lost in its stop; 12 of it goes to its own engine.
   */
  @Test
  void theOtherRoomGivesWhatItsEngineLeaves() {
    Plant plant = Starts.plant("100");
    plant.walk((name, value) -> name.equals("main-line.pressure") ? 4.0e6 : value);
    plant.set(Port.BULKHEAD_STOP, 1);
    plant.set(Port.OTHER_ROOM_PRESSURE, 4.2e6);
    plant.set(Port.OTHER_ROOM_STEAM, 12);
    plant.evaluate();
    assertThat(plant.value(Quantity.BULKHEAD_STOP_FLOW)).isCloseTo(1.615, within(0.001));
    plant.set(Port.OTHER_ROOM_STEAM, 0);
    plant.evaluate();
    assertThat(plant.value(Quantity.BULKHEAD_STOP_FLOW)).isEqualTo(5);
    plant.set(Port.OTHER_ROOM_PRESSURE, 3.9e6);
    plant.evaluate();
    assertThat(plant.value(Quantity.BULKHEAD_STOP_FLOW)).isZero();
  }

  /** 0.10 kg/s of heating steam at rated pressure, proportional over the last 10 K. */
  @Test
  void theHeaterObeysItsThermostat() {
    Plant plant = Starts.plant("100");
    plant.walk((name, value) -> name.equals("fuel.temperature") ? 345 : value);
    plant.set(Port.FUEL_HEATER_THERMOSTAT, 350);
    plant.evaluate();
    assertThat(plant.fuel.heaterKgPerS).isCloseTo(0.05, withPercentage(0.1));
    plant.set(Port.FUEL_HEATER_THERMOSTAT, 344);
    plant.evaluate();
    assertThat(plant.fuel.heaterKgPerS).isZero();
  }

  /** Without pressure the blowers, feed and fuel pumps stand; the other source keeps them going. */
  @Test
  void auxiliariesDieWithThePressureUnlessTheOtherSourceIsOpen() {
    Plant dying = Starts.plant("100");
    Plant kept = Starts.plant("100");
    dying.set(Port.AUXILIARY_STOP, 0);
    kept.set(Port.AUXILIARY_STOP, 0);
    kept.set(Port.OTHER_AUXILIARY_STEAM, 1);
    Run.ticks(dying, 600);
    Run.ticks(kept, 600);
    assertThat(dying.value(Quantity.AUXILIARY_SHARE)).isZero();
    assertThat(dying.value(Quantity.FEED_FLOW)).isZero();
    assertThat(dying.value(Quantity.BLOWER_1_SPEED)).isLessThan(0.4);
    assertThat(dying.value(Quantity.FURNACE_ANY_LIT)).isZero();
    assertThat(kept.value(Quantity.AUXILIARY_FLOW)).isZero();
    assertThat(kept.value(Quantity.FURNACE_ANY_LIT)).isEqualTo(1);
    assertThat(kept.value(Quantity.FEED_FLOW)).isGreaterThan(12);
  }
}
