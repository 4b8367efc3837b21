package handwheel.drill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import handwheel.plant.Quantity;
import handwheel.reader.ScriptReader;
import handwheel.ship.Gauge;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Every fault a script can write, played by the plant with nobody acting. */
class FaultsTest {
  /** A fault, how long it is watched, and the gauge on which a person sees it. */
  static Stream<Arguments> faults() {
    return Stream.of(
        Arguments.of(
            "fault: leak, id: f, at: main-run, hole: 0.5 in, ramp: 2 s", 60, "line-pressure"),
        Arguments.of(
            "fault: leak, id: f, at: superheater-head, hole: 0.5 in, ramp: 1 s",
            60,
            "drum-pressure"),
        Arguments.of(
            "fault: leak, id: f, at: drum-head, hole: 0.5 in, ramp: 1 s", 60, "drum-pressure"),
        Arguments.of("fault: tube-rupture, id: f, hole: 1 in, ramp: 1 s", 60, "drum-level"),
        Arguments.of("fault: economizer-leak, id: f, hole: 0.5 in", 120, "stack-temperature"),
        Arguments.of(
            "fault: burner-plugged, id: f, burner: s3, share: 100 %, ramp: 10 s",
            60, "drum-pressure"),
        Arguments.of("fault: intake-flooding, id: f, blower: 1, flow: 3.6 kg/s", 60, "black-smoke"),
        Arguments.of("fault: flap-stuck, id: f, blower: 1, share: 100 %", 60, "air-box-pressure"),
        Arguments.of("fault: blower-trip, id: f, blower: 2", 30, "blower-2-speed"),
        Arguments.of(
            "fault: suction-lost, id: f, tank: 1, share: 100 %, ramp: 2 s", 30, "header-pressure"),
        Arguments.of("fault: water-in-oil, id: f, tank: 1, share: 60 %", 90, "white-smoke"),
        Arguments.of(
            "fault: strainer-fouled, id: f, share: 90 %, ramp: 20 s", 60, "header-pressure"),
        Arguments.of("fault: condenser-leak, id: f, chloride: 100 ppm", 120, "salinity"),
        Arguments.of("fault: safety-stuck, id: f, valve: drum-1, is: open", 60, "drum-pressure"),
        Arguments.of(
            "fault: spray-leak, id: f, line: header, hole: 0.125 in", 60, "header-pressure"),
        Arguments.of("fault: fire, id: f, flow: 0.2 kg/s", 60, "lower-air"),
        Arguments.of("fault: flooding, id: f, flow: 0.1 m3/s", 120, "bilge"),
        Arguments.of("fault: power-lost, id: f", 120, "upper-air"),
        Arguments.of(
            "fault: brickwork-failed, id: f, side: saturated, share: 40 %", 300, "upper-air"),
        Arguments.of("fault: deaerating-tank-low, id: f, flow: 12 kg/s", 60, "deaerating-tank"),
        Arguments.of(
            "fault: uptake-fire, id: f, soot: 0.03 kg/s, ramp: 20 s", 60, "stack-temperature"),
        Arguments.of("fault: machine-dead, id: f, fitting: main-feed-pump", 30, "feed-pressure"),
        Arguments.of(
            "fault: gauge-wrong, id: f, gauge: drum-pressure, reads: high, by: 40 psig, ramp: 30 s",
            60,
            "drum-pressure"),
        Arguments.of(
            "fault: gauge-wrong, id: f, gauge: header-pressure, reads: low, by: 40 psig",
            20,
            "header-pressure"),
        Arguments.of(
            "fault: gauge-wrong, id: f, gauge: drum-pressure, reads: empty", 20, "drum-pressure"),
        Arguments.of(
            "fault: glass-blocked, id: f, gauge: drum-level, ramp: 90 s", 60, "drum-level"));
  }

  @ParameterizedTest
  @MethodSource("faults")
  void showsOnAGaugeAPersonCanRead(String fault, int seconds, String gauge) {
    Gauge read = FaultRun.SHIP.gauge(gauge).orElseThrow();
    // A flap that sticks open is nothing to a fan that runs.
    String stopped = fault.contains("flap-stuck") ? "{fault: blower-trip, id: t, blower: 1}" : "";
    double without = FaultRun.play(stopped, seconds).session.sight().shown(read);
    String acts = String.join(", ", FaultRun.nonBlank(stopped, "{" + fault + "}"));
    double with = FaultRun.play(acts, seconds).session.sight().shown(read);
    assertThat(figure(read, with)).isNotEqualTo(figure(read, without));
  }

  private static long figure(Gauge gauge, double shown) {
    double step = StrictMath.pow(10, gauge.unit().decimals());
    return StrictMath.round(shown * step);
  }

  @Test
  void everyFaultOfTheLanguageIsPlayed() {
    TreeSet<String> played = new TreeSet<>();
    faults().forEach(a -> played.add(((String) a.get()[0]).split("[:,] ?", -1)[1].strip()));
    played.addAll(
        List.of("oil-spill", "ignition", "fitting-stuck", "fitting-stiff", "gear-failed"));
    assertThat(ScriptReader.faultWords()).containsExactlyElementsOf(inOrder(played));
  }

  private static List<String> inOrder(Set<String> words) {
    return ScriptReader.faultWords().stream().filter(words::contains).toList();
  }

  @Test
  void setsInAfterItsDelayGrowsAndGoesByItself() {
    String fault = "{fault: flooding, id: f, flow: 0.2 m3/s, after: 5 s, ramp: 10 s, for: 20 s}";
    FaultRun run = FaultRun.play(fault, 40);
    ToDoubleFunction<Integer> inflow =
        s -> (run.truth(Quantity.BILGE_VOLUME, s + 1) - run.truth(Quantity.BILGE_VOLUME, s));
    assertThat(inflow.applyAsDouble(3)).isZero();
    assertThat(inflow.applyAsDouble(10)).isCloseTo(0.11, within(0.01));
    assertThat(inflow.applyAsDouble(20)).isCloseTo(0.2, within(1e-9));
    assertThat(inflow.applyAsDouble(27)).isZero();
    assertThat(run.events()).containsSubsequence("fault f begins", "fault f ends");
  }

  @Test
  void isMendedByTheScript() {
    FaultRun run =
        FaultRun.play(
            "{fault: flooding, id: f, flow: 0.2 m3/s}", 40, "{mend: f, over: 4 s}", List.of());
    double before = run.truth(Quantity.BILGE_VOLUME, 10) - run.truth(Quantity.BILGE_VOLUME, 9);
    double after = run.truth(Quantity.BILGE_VOLUME, 39) - run.truth(Quantity.BILGE_VOLUME, 35);
    assertThat(before).isCloseTo(0.2, within(1e-9));
    assertThat(after).isZero();
  }

  @Test
  void spiltOilBurnsOnlyWhereSomethingLightsIt() {
    String spill = "{fault: oil-spill, id: f, flow: 0.2 kg/s}";
    assertThat(FaultRun.play(spill, 60).truth(Quantity.FIRE_BURNING, 60)).isZero();
    assertThat(FaultRun.play(spill + ", {fault: ignition, id: g, after: 20 s}", 60).events())
        .contains("oil fire starts");
  }

  @Test
  void aSafetyStuckShutDoesNotLift() {
    List<String> orders = List.of("2 pumpman set fuel-governor to 350 psig");
    String outside = "{outside: throttle, to: shut, over: 5 s}, ";
    assertThat(FaultRun.play(outside + "{fault: ignition, id: g}", 60, "", orders).events())
        .anyMatch(e -> e.contains("superheater lifts"));
    String stuck = "{fault: safety-stuck, id: f, valve: superheater, is: shut}";
    assertThat(FaultRun.play(outside + stuck, 60, "", orders).events())
        .noneMatch(e -> e.contains("superheater lifts"));
  }

  @Test
  void aStuckFittingIsReportedAndStaysWhereItIs() {
    FaultRun run =
        FaultRun.play(
            "{fault: fitting-stuck, id: f, fitting: main-stop}",
            60,
            "",
            List.of("1 checkman shut main-stop"));
    assertThat(run.refusals()).containsExactly("It is stuck.");
    assertThat(run.truth(Quantity.MAIN_STOP_POSITION, 60)).isEqualTo(1);
  }

  @Test
  void aFittingJamsPartWay() {
    FaultRun run =
        FaultRun.play(
            "{fault: fitting-stuck, id: f, fitting: main-stop, at: 40 %}",
            90, "", List.of("1 checkman shut main-stop"));
    assertThat(run.refusals()).containsExactly("It is stuck.");
    assertThat(run.truth(Quantity.MAIN_STOP_POSITION, 90)).isEqualTo(0.4);
  }

  @Test
  void aStiffFittingTakesSoManyTimesLonger() {
    List<String> order = List.of("1 checkman shut main-stop");
    double free = FaultRun.play("", 40, "", order).truth(Quantity.MAIN_STOP_POSITION, 40);
    String stiff = "{fault: fitting-stiff, id: f, fitting: main-stop, times: 3}";
    double slow = FaultRun.play(stiff, 40, "", order).truth(Quantity.MAIN_STOP_POSITION, 40);
    double wholeTicks = 1e-4; // both times are rounded to whole ticks
    assertThat(1 - slow).isCloseTo((1 - free) / 3, within(wholeTicks));
  }

  @Test
  void failedGearTurnsAndMovesNothing() {
    String failed = "{fault: gear-failed, id: f, fitting: fuel-trip-saturated, at: remote-station}";
    List<String> orders =
        List.of(
            "1 remote-hand trip fuel-trip-saturated from remote-station",
            "70 burnerman-saturated trip fuel-trip-saturated");
    FaultRun run = FaultRun.play(failed, 90, "", orders);
    assertThat(run.refusals()).containsExactly("The gear turns and nothing moves.");
    assertThat(run.truth(Quantity.FURNACE_SATURATED_LIT, 69)).isEqualTo(1);
    assertThat(run.truth(Quantity.FURNACE_SATURATED_LIT, 90)).isZero();
  }

  @Test
  void aDeadMachineStopsAndWillNotStart() {
    FaultRun run =
        FaultRun.play(
            "{fault: machine-dead, id: f, fitting: main-feed-pump, for: 30 s}",
            90,
            "",
            List.of("5 pumpman start main-feed-pump", "40 pumpman start main-feed-pump"));
    assertThat(run.refusals()).containsExactly("It will not start.");
    assertThat(run.truth(Quantity.FEED_MAIN_PUMP_SPEED, 30)).isLessThan(0.1);
    assertThat(run.truth(Quantity.FEED_MAIN_PUMP_SPEED, 90)).isGreaterThan(0.5);
  }

  @Test
  void theCheckmanBelievesAGlassThatLies() {
    double right = FaultRun.play("", 120).truth(Quantity.DRUM_LEVEL, 120);
    String lies = "{fault: gauge-wrong, id: f, gauge: drum-level, reads: high, by: 3 in}";
    assertThat(FaultRun.play(lies, 120).truth(Quantity.DRUM_LEVEL, 120)).isLessThan(right - 0.05);
  }

  @Test
  void aNewPlateIsClean() {
    String plugged = "{fault: burner-plugged, id: f, burner: s3, share: 100 %}";
    List<String> change =
        List.of(
            "5 burnerman-saturated shut root-s3",
            "10 burnerman-saturated set plate-s3 to 4",
            "80 burnerman-saturated light burner-s3");
    FaultRun run = FaultRun.play(plugged, 110, "", change);
    assertThat(run.truth(Quantity.BURNER_S3_LIT, 5)).isZero();
    assertThat(run.truth(Quantity.BURNER_S3_LIT, 110)).isEqualTo(1);
  }

  @Test
  void theEasingGearLiftsBlowsAndReseats() {
    List<String> orders = List.of("1 checkman open easing-gear", "60 checkman shut easing-gear");
    FaultRun run = FaultRun.play("", 240, "", orders);
    assertThat(run.events())
        .contains("safety valve superheater lifts", "safety valve drum 1 lifts")
        .contains("safety valve superheater reseats", "safety valve drum 1 reseats")
        .doesNotContain("safety valve drum 2 lifts");
    assertThat(run.truth(Quantity.DRUM_PRESSURE, 60))
        .isLessThan(run.truth(Quantity.DRUM_PRESSURE, 1));
  }

  @Test
  void oilAndWaterUnderfootAreSeen() {
    List<String> look = List.of("50 messenger look gauge-board");
    assertThat(FaultRun.play("{fault: oil-spill, id: f, flow: 0.1 kg/s}", 60, "", look).looks())
        .containsExactly("Oil on the plates.");
    assertThat(FaultRun.play("{fault: flooding, id: f, flow: 2 m3/s}", 60, "", look).looks())
        .containsExactly("Water over the plates.");
    assertThat(FaultRun.play("", 60, "", look).looks())
        .containsExactly("Clear air, nothing out of place.");
  }
}
