package handwheel.plant;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Leaving the range in which the equations hold is told, once, and nothing is told inside. */
class ModelRangeTest {
  @ParameterizedTest
  @CsvSource({
    "drum.temperature,605,drum temperature 605.0 K | 280.0 K to 600.0 K",
    "drum.temperature,279,drum temperature 279.0 K | 280.0 K to 600.0 K",
    "drum.water-volume,0.3,boiler water volume 0.300 m3 | 0.350 m3 to 9.600 m3",
    "drum.water-volume,9.65,boiler water volume 9.650 m3 | 0.350 m3 to 9.600 m3",
    "superheater.outlet.temperature,951,superheater outlet temperature 1252 F | 32 F to 1250 F",
    "superheater.damage,1,superheater tube damage 1.000 | below 1.000",
    "tube.damage,1.5,generating tube damage 1.500 | below 1.000",
    "furnace.saturated.gas.temperature,2301,saturated furnace gas temperature 3682 F | -10 F to 3680 F",
    "furnace.superheater.gas.temperature,240,superheater furnace gas temperature -28 F | -10 F to 3680 F",
    "blower.1.speed,1.3,blower 1 speed 1.300 | below 1.250",
    "blower.2.speed,1.3,blower 2 speed 1.300 | below 1.250",
    "fuel.temperature,401,fuel oil temperature 262 F | 44 F to 260 F",
    "deaerating-tank.temperature,431,deaerating tank temperature 316 F | 44 F to 314 F",
    "space.upper.temperature,874,upper level temperature 1114 F | 46 F to 1112 F",
    "space.lower.temperature,280,lower level temperature 44 F | 46 F to 1112 F",
    "space.upper.vapour-mass-fraction,0.995,upper level vapour 0.995 | below 0.995",
    "space.lower.vapour-mass-fraction,0.995,lower level vapour 0.995 | below 0.995",
    "space.upper.oxygen,-0.001,upper level oxygen -0.001 | 0.000 to 0.240",
    "bilge.volume,76,bilge depth 3.32 ft | below 3.28 ft",
    "fire.oil.mass,25,oil on the deck plates 25.0 kg | below 24.0 kg",
  })
  void leavingIsTold(String state, double value, String told) {
    Plant plant = Starts.plant("50");
    plant.walk((name, x) -> name.equals(state) ? value : x);
    assertThat(told(plant, 1)).contains(told);
  }

  /** 5 MPa, the upper end of the fitted enthalpy of superheated steam, is 725 psia. */
  @Test
  void anOutletAboveFiveMegapascalIsTold() {
    Plant plant = Starts.plant("50");
    plant.walk((name, x) -> name.equals("drum.temperature") ? 540 : x);
    plant.walk((name, x) -> name.equals("main-line.pressure") ? 5.2e6 : x);
    assertThat(told(plant, 1))
        .anyMatch(t -> t.equals("superheater outlet pressure 755.6 psia | below 725.2 psia"));
  }

  @Test
  void noNumberIsOutsideEveryRange() {
    Plant plant = Starts.plant("50");
    plant.walk((name, x) -> name.equals("fuel.temperature") ? Double.NaN : x);
    assertThat(told(plant, 1)).contains("fuel oil temperature ? F | 44 F to 260 F");
  }

  @Test
  void itIsToldOnceAlsoByACopy() {
    Plant plant = Starts.plant("50");
    plant.walk((name, x) -> name.equals("bilge.volume") ? 80 : x);
    assertThat(told(plant, 100)).hasSize(1);
    assertThat(told(plant.copy(), 100)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"25", "50", "100", "boiler-cold", "furnace-cold", "furnace-hot"})
  void everyStartConditionIsInside(String start) {
    assertThat(told(Starts.plant(start), 1200)).isEmpty();
  }

  /** The nineteen ranges of this test, each with a flag of its own in the state. */
  @Test
  void everyRangeHasAnOwnFlag() {
    SortedMap<String, Double> flags = new TreeMap<>();
    Starts.plant("50").walk((name, x) -> note(flags, name, x));
    assertThat(flags).hasSize(19);
  }

  @Test
  void thePageTellsEveryRange() {
    StringBuilder page = new StringBuilder(HEAD);
    for (ModelRange range : Starts.plant("50").ranges()) {
      range.walkFlag(
          (name, x) -> {
            page.append("| `").append(name).append("` | flag | ").append(range.name());
            page.append(": ").append(range.limits()).append(" |\n");
            return x;
          });
    }
    GoldenPage.check("outside-the-model", page.toString());
  }

  private static final String HEAD =
      """
      # Outside the model

      In what ranges the equations hold. A run that leaves one goes on, but it is told once for each
      figure, and what follows proves nothing: the drill writes "outside the model" into the record,
      score sheet and debrief show it. Code: `ModelRange`, declared by each machine. Written by a
      test.

      - Drum temperature: the nodes of the steam table, IAPWS R7-97 [published]. Boiler water: below,
        the boiler has run dry and is held there; above, it is full and takes no more feed [estimate].
      - Superheated steam: the fitted enthalpy, to 5 MPa and 950 K [published]; not below ice.
      - Tubes: one that failed does not leak by itself.
      - Furnace gas: one heat capacity [estimate]. Blowers: fan laws a quarter above rated speed
        [estimate]; there is no overspeed trip unless a fault trips them.
      - Fire room: a layer at 600 C flashes over [memory]; its walls do not freeze.
      - Oil on the plates: twelve square metres, two kilograms on each [estimate]. Bilge: water at the
        furnace bottoms [estimate].

      | state | unit | meaning |
      |---|---|---|
      """;

  private static double note(SortedMap<String, Double> flags, String name, double x) {
    if (name.startsWith("outside.")) {
      flags.put(name, x);
    }
    return x;
  }

  private static List<String> told(Plant plant, int ticks) {
    List<String> told = new ArrayList<>();
    Run.ticks(
        plant,
        ticks,
        new QuietEvents() {
          @Override
          public void leftRange(ModelRange range, double si) {
            told.add(range.name() + " " + range.figure(si) + " | " + range.limits());
          }
        });
    return told;
  }
}
