package handwheel.plant;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import handwheel.water.SaturationTable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Holds one evaluation of the plant to fifteen complete evaluations of an independent study of the
 * same equations: every rate, every decay rate and the main outputs.
 */
class ProbeTest {
  /** The study used a library exponential, the plant a table good to 3e-13. */
  private static final double RELATIVE = 1e-9;

  /** Rates are small differences of large flows; each is held to this share of a full swing. */
  private static final double SWING = 1e-12;

  private static final Map<String, ToDoubleFunction<Plant>> OUTPUTS = outputs();

  @TestFactory
  Stream<DynamicTest> everyRateAndOutputAgrees() {
    List<DynamicTest> tests = new ArrayList<>();
    for (JsonElement probe : Starts.json("probes.json").getAsJsonArray()) {
      JsonObject p = probe.getAsJsonObject();
      tests.add(dynamicTest(p.get("name").getAsString(), () -> check(p)));
    }
    assertThat(tests).hasSize(15);
    return tests.stream();
  }

  private static void check(JsonObject probe) {
    Plant plant = plant(probe);
    plant.evaluate();
    List<String> wrong = new ArrayList<>();
    Map<String, State> states = states(plant);
    for (String symbol : probe.getAsJsonObject("dx").keySet()) {
      State state = requireNonNull(states.get(Starts.stateName(symbol)));
      double factor = Starts.factor("state", symbol);
      double dx = probe.getAsJsonObject("dx").get(symbol).getAsDouble();
      double scale = SWING * Math.max(Math.abs(state.x / factor), 1) * swing(symbol);
      compare("dx " + symbol, state.dx / factor, dx, scale, wrong);
      double decay = probe.getAsJsonObject("L").get(symbol).getAsDouble();
      compare("L " + symbol, state.decayPerS, decay, 1e-12, wrong);
    }
    JsonObject outputs = probe.getAsJsonObject("outputs");
    assertThat(OUTPUTS.keySet()).containsAll(outputs.keySet());
    for (String symbol : outputs.keySet()) {
      double value = requireNonNull(OUTPUTS.get(symbol)).applyAsDouble(plant);
      compare("output " + symbol, value, outputs.get(symbol).getAsDouble(), 1e-9, wrong);
    }
    assertThat(wrong).isEmpty();
  }

  /** Fastest own rate of a state whose rate is a difference of large flows, 1/s. */
  private static double swing(String symbol) {
    return symbol.matches("pl|ph|pab|Tg.|X.|Mv.") ? 1000 : 1;
  }

  private static void compare(
      String name, double found, double expected, double absolute, List<String> wrong) {
    double allowed = absolute + RELATIVE * Math.abs(expected);
    if (!(Math.abs(found - expected) <= allowed)) {
      wrong.add(name + " is " + found + ", not " + expected);
    }
  }

  private static Plant plant(JsonObject probe) {
    SortedMap<String, Double> values = new TreeMap<>();
    JsonObject x = probe.getAsJsonObject("x");
    for (String symbol : x.keySet()) {
      values.put(
          Starts.stateName(symbol), x.get(symbol).getAsDouble() * Starts.factor("state", symbol));
    }
    discrete(probe.getAsJsonObject("discrete"), values);
    Plant plant = Plant.of(PlantNumbers.usual(), SaturationTable.standard());
    plant.restore(values, Starts.ports(probe.get("controls")));
    return plant;
  }

  private static void discrete(JsonObject flags, SortedMap<String, Double> values) {
    Starts.flags(flags.getAsJsonArray("lit"), values);
    each(
        flags.getAsJsonArray("safety"),
        values,
        "safety.superheater.lifted",
        "safety.drum-1.lifted",
        "safety.drum-2.lifted");
    each(flags.getAsJsonArray("trip"), values, "blower.1.tripped", "blower.2.tripped");
    each(
        flags.getAsJsonArray("burnsAsFormed"),
        values,
        "furnace.saturated.burns-as-formed-ticks",
        "furnace.superheater.burns-as-formed-ticks");
    values.put("furnace.steam-wet", flags.get("wet").getAsBoolean() ? 1.0 : 0.0);
    values.put("fire.burning", flags.get("fire").getAsBoolean() ? 1.0 : 0.0);
  }

  private static void each(JsonArray flags, SortedMap<String, Double> values, String... names) {
    for (int i = 0; i < names.length; i++) {
      values.put(names[i], flags.get(i).getAsBoolean() ? 1.0 : 0.0);
    }
  }

  private static Map<String, State> states(Plant plant) {
    Map<String, State> byName = new LinkedHashMap<>();
    for (State state : plant.continuous()) {
      byName.put(state.name, state);
    }
    return byName;
  }

  private static Map<String, ToDoubleFunction<Plant>> outputs() {
    Map<String, ToDoubleFunction<Plant>> m = new LinkedHashMap<>();
    m.put("p", p -> p.drum.pressurePa);
    m.put("psh", p -> p.line.superheaterOutletPa);
    m.put("lvl", p -> p.drum.levelM);
    m.put("Wsh", p -> p.line.superheaterKgPerS);
    m.put("Wm", p -> p.line.mainStopKgPerS);
    m.put("Wx", p -> p.line.otherRoomKgPerS);
    m.put("Wms", p -> p.line.engineKgPerS);
    m.put("Waux", p -> p.auxiliary.flowKgPerS);
    m.put("qs", p -> p.drum.steamKgPerS);
    m.put("qf", p -> p.feed.flowKgPerS);
    m.put("Wlk", p -> p.line.leakBeforeStopKgPerS + p.line.leakMainRunKgPerS);
    m.put("Wsv", p -> p.line.safetyKgPerS());
    m.put("Wtube", p -> p.drum.tubeKgPerS);
    m.put("ft", p -> p.front.totalKgPerS);
    m.put("ma", p -> p.air.totalKgPerS);
    m.put("pf", p -> p.air.furnacePa);
    m.put("Qr", p -> p.gas.evaporationW);
    m.put("Qeco", p -> p.gas.economizerW);
    m.put("Qms", p -> p.superheater.steamHeatW);
    m.put("Qgm", p -> p.superheater.gasHeatW);
    m.put("Qcas", p -> p.gas.casingW);
    m.put("dry", p -> p.drum.dryFraction);
    m.put("wfu", p -> p.air.waterToFurnacesKgPerS);
    m.put("up", p -> p.space.upKgPerS);
    m.put("dn", p -> p.space.downKgPerS);
    m.put("top", p -> p.space.topKgPerS);
    m.put("mup", p -> p.space.makeUpKgPerS);
    m.put("pblS", p -> p.fuel.burnerLinePa(Side.SATURATED));
    m.put("pblH", p -> p.fuel.burnerLinePa(Side.SUPERHEATER));
    return m;
  }
}
