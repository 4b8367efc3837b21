package handwheel.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import handwheel.water.SaturationTable;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class PlantCopyTest {
  @Test
  void copiesSteppedAlikeStayAlike() {
    Plant plant = leaking();
    Run.ticks(plant, 300);
    plant.advance();
    Plant copy = plant.copy();
    assertThat(StateDigest.of(copy)).isEqualTo(StateDigest.of(plant));
    Run.ticks(plant, 400);
    Run.ticks(copy, 400);
    assertThat(StateDigest.of(copy)).isEqualTo(StateDigest.of(plant));
  }

  @Test
  void aCopyGoesItsOwnWay() {
    Plant plant = leaking();
    Run.ticks(plant, 100);
    Plant copy = plant.copy();
    String before = StateDigest.of(plant);
    copy.set(Port.FUEL_TRIP_SATURATED, 0);
    Run.ticks(copy, 1);
    assertThat(StateDigest.of(plant)).isEqualTo(before);
    assertThat(StateDigest.of(copy)).isNotEqualTo(before);
  }

  @Test
  void aCopyShowsTheValuesOfTheLastEvaluation() {
    Plant plant = leaking();
    Run.ticks(plant, 100);
    plant.advance();
    Plant copy = plant.copy();
    for (Quantity quantity : Quantity.values()) {
      assertThat(copy.value(quantity)).as(quantity.id()).isEqualTo(plant.value(quantity));
    }
  }

  @Test
  void everyStateIsDigested() {
    String before = StateDigest.of(Starts.plant("100"));
    List<String> names = new ArrayList<>();
    Starts.plant("100").walk((name, value) -> note(names, name, value));
    for (String changed : names) {
      Plant plant = Starts.plant("100");
      plant.walk((name, value) -> name.equals(changed) ? value + 1 : value);
      assertThat(StateDigest.of(plant)).as(changed).isNotEqualTo(before);
    }
    assertThat(names).doesNotHaveDuplicates().hasSizeGreaterThan(61 + 8 + Port.values().length);
  }

  private static double note(List<String> names, String name, double value) {
    names.add(name);
    return value;
  }

  @Test
  void thereAreSixtyOneContinuousStates() {
    assertThat(Starts.plant("100").continuousStates()).hasSize(61).doesNotHaveDuplicates();
  }

  @Test
  void everyIdIsFoundAndNoneIsShared() {
    for (Port port : Port.values()) {
      assertThat(Port.ofId(port.id())).contains(port);
    }
    for (Quantity quantity : Quantity.values()) {
      assertThat(Quantity.ofId(quantity.id())).contains(quantity);
    }
    for (PlantNumber number : PlantNumber.values()) {
      assertThat(PlantNumber.ofId(number.id())).contains(number);
    }
    assertThat(Quantity.ofId("drum.presure")).isEmpty();
  }

  @Test
  void everyQuantityIsAFiniteNumber() {
    Plant plant = Starts.plant("100");
    plant.evaluate();
    for (Quantity quantity : Quantity.values()) {
      assertThat(plant.value(quantity)).as(quantity.id()).isFinite();
    }
  }

  @Test
  void aConditionWithoutAStateOrWithAnUnknownOneIsRefused() {
    Plant plant = Plant.of(PlantNumbers.usual(), SaturationTable.standard());
    SortedMap<String, Double> states = Starts.states("100");
    states.put("drum.presure", 1.0);
    states.remove("drum.temperature");
    assertThatThrownBy(() -> plant.restore(states, new TreeMap<>()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("drum.presure")
        .hasMessageContaining("drum.temperature");
  }

  @Test
  void aPortRefusesWhatItCannotStandAt() {
    Plant plant = Starts.plant("100");
    assertThatThrownBy(() -> plant.set(Port.MAIN_STOP, 1.2))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> plant.set(Port.PLATE_S1, 2.5))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> plant.set(Port.MAIN_STOP, Double.NaN))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void aStateThatIsNoNumberIsSeen() {
    Plant plant = Starts.plant("100");
    assertThat(plant.isFinite()).isTrue();
    plant.walk((name, value) -> name.equals("drum.bubbles") ? Double.NaN : value);
    assertThat(plant.isFinite()).isFalse();
  }

  private static Plant leaking() {
    Plant plant = Starts.plant("100");
    plant.set(Port.LEAK_MAIN_RUN, 5.067e-4);
    return plant;
  }
}
