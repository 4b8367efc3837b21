package handwheel.drill;

import static org.assertj.core.api.Assertions.assertThat;

import handwheel.plant.Quantity;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every casualty of the trade that this fire room knows can be written as faults of machines, and
 * its first sign comes from the plant. The signs are common practice, no source.
 */
class CasualtiesAsFaultsTest {
  private static final String LEAK = "{fault: leak, id: f, at: main-run, ramp: 2 s, hole: ";
  private static final String SHUT = "{outside: throttle, to: shut, over: 5 s}";

  static Stream<Arguments> casualties() {
    return Stream.of(
        row("major steam leak", LEAK + "1 in}", 20, Quantity.MAIN_LINE_PRESSURE, -1),
        row("minor steam leak", LEAK + "0.125 in}", 60, Quantity.DRUM_PRESSURE, -1),
        row(
            "blower intake flooded",
            "{fault: intake-flooding, id: f, blower: 1, flow: 8 lb/s}",
            20,
            Quantity.STACK_BLACK,
            1),
        row(
            "fuel suction lost",
            "{fault: suction-lost, id: f, tank: 1, share: 100 %}",
            12,
            Quantity.FUEL_HEADER_PRESSURE,
            -1),
        row(
            "water in the fuel",
            "{fault: water-in-oil, id: f, tank: 1, share: 80 %}",
            90,
            Quantity.STACK_WHITE,
            1),
        row("low water", stuckCheck("to: 20 %"), 60, Quantity.DRUM_LEVEL, -1),
        row("high water", stuckCheck("to: 60 %"), 60, Quantity.DRUM_LEVEL, 1),
        row(
            "feed pump lost",
            "{fault: machine-dead, id: f, fitting: main-feed-pump}",
            20,
            Quantity.FEED_PRESSURE,
            -1),
        row(
            "ruptured tube",
            "{fault: tube-rupture, id: f, hole: 1 in}",
            20,
            Quantity.FURNACE_PRESSURE,
            1),
        row(
            "flareback",
            "{fault: suction-lost, id: f, tank: 1, share: 100 %, for: 18 s}",
            20,
            Quantity.FURNACE_SATURATED_LIT,
            -1),
        row(
            "hazard at light-off",
            "{fault: burner-plugged, id: f, burner: s1, share: 100 %}",
            20,
            Quantity.BURNER_S1_LIT,
            -1),
        row("black smoke", "{fault: blower-trip, id: f, blower: 1}", 15, Quantity.STACK_BLACK, 1),
        row(
            "white smoke",
            "{fault: water-in-oil, id: f, tank: 1, share: 60 %}",
            90,
            Quantity.STACK_WHITE,
            1),
        row(
            "high superheat",
            "{fault: burner-plugged, id: f, burner: s3, share: 100 %}",
            120,
            Quantity.SUPERHEATER_OUTLET_TEMPERATURE,
            1),
        row("superheater flow lost", SHUT, 20, Quantity.SUPERHEATER_METAL_TEMPERATURE, 1),
        row(
            "oil leak at the front",
            "{fault: spray-leak, id: f, line: saturated-line, hole: 0.0625 in}",
            20,
            Quantity.FIRE_OIL_MASS,
            1),
        row(
            "oil fire in the bilge",
            "{fault: fire, id: f, flow: 0.2 kg/s}",
            30,
            Quantity.SPACE_UPPER_TEMPERATURE,
            1),
        row(
            "brickwork failed",
            "{fault: brickwork-failed, id: f, side: saturated, share: 40 %}",
            300,
            Quantity.SPACE_UPPER_TEMPERATURE,
            1),
        row(
            "salted feed",
            "{fault: condenser-leak, id: f, chloride: 100 ppm}",
            120,
            Quantity.DRUM_CHLORIDE,
            1),
        row(
            "economizer leak",
            "{fault: economizer-leak, id: f, hole: 0.5 in}",
            60,
            Quantity.STACK_TEMPERATURE,
            -1),
        row(
            "safety valve stuck open",
            "{fault: safety-stuck, id: f, valve: drum-1, is: open}",
            30,
            Quantity.DRUM_PRESSURE,
            -1),
        row("power lost", "{fault: power-lost, id: f}", 60, Quantity.SPACE_UPPER_TEMPERATURE, 1),
        row(
            "deaerating tank low",
            "{fault: deaerating-tank-low, id: f, flow: 12 kg/s}",
            60,
            Quantity.DEAERATING_TANK_MASS,
            -1),
        row(
            "soot fire",
            "{fault: uptake-fire, id: f, soot: 0.03 kg/s}",
            30,
            Quantity.STACK_TEMPERATURE,
            1),
        row("flooding", "{fault: flooding, id: f, flow: 0.1 m3/s}", 60, Quantity.BILGE_DEPTH, 1),
        row(
            "gauge glass lost",
            "{fault: gauge-wrong, id: f, gauge: drum-level, reads: high, by: 4 in}",
            90,
            Quantity.DRUM_LEVEL,
            -1));
  }

  private static String stuckCheck(String to) {
    return "{outside: feed-check, over: 2 s, "
        + to
        + "}, {fault: fitting-stuck, id: f, fitting: feed-check, after: 3 s}";
  }

  private static Arguments row(
      String name, String acts, int seconds, Quantity sign, int direction) {
    return Arguments.of(name, acts, seconds, sign, direction);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("casualties")
  void itsFirstSignComesFromThePlant(
      String name, String acts, int seconds, Quantity sign, int direction) {
    FaultRun quiet = FaultRun.play("", seconds, "", List.of());
    FaultRun struck = FaultRun.play(acts, seconds, "", List.of());
    double change = struck.truth(sign, seconds) - quiet.truth(sign, seconds);
    assertThat(change * direction).as(name).isPositive();
  }
}
