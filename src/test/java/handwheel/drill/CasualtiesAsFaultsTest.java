package handwheel.drill;

import static org.assertj.core.api.Assertions.assertThat;

import handwheel.plant.Quantity;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Every casualty of the trade that this fire room knows can be written as faults of machines, and
 * its first sign comes from the plant. The signs are common practice, no source.
 */
class CasualtiesAsFaultsTest {
  /** Name, acts of the script, seconds, true value, whether it goes up or down. */
  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          major steam leak | {fault: leak, id: f, at: main-run, ramp: 2 s, hole: 1 in} | 20 | main-line.pressure | -1
          minor steam leak | {fault: leak, id: f, at: main-run, ramp: 2 s, hole: 0.125 in} | 60 | drum.pressure | -1
          blower intake flooded | {fault: intake-flooding, id: f, blower: 1, flow: 8 lb/s} | 20 | stack.black | 1
          fuel suction lost | {fault: suction-lost, id: f, tank: 1, share: 100 %} | 12 | fuel.header.pressure | -1
          water in the fuel | {fault: water-in-oil, id: f, tank: 1, share: 80 %} | 90 | stack.white | 1
          low water | {outside: feed-check, to: 20 %, over: 2 s}, {fault: fitting-stuck, id: f, fitting: feed-check, after: 3 s} | 60 | drum.level | -1
          high water | {outside: feed-check, to: 60 %, over: 2 s}, {fault: fitting-stuck, id: f, fitting: feed-check, after: 3 s} | 60 | drum.level | 1
          feed pump lost | {fault: machine-dead, id: f, fitting: main-feed-pump} | 20 | feed.pressure | -1
          ruptured tube | {fault: tube-rupture, id: f, hole: 1 in} | 20 | furnace.pressure | 1
          flareback, oil back on hot brick | {fault: suction-lost, id: f, tank: 1, share: 100 %, for: 18 s} | 20 | furnace.saturated.lit | -1
          no oil at light-off | {fault: burner-plugged, id: f, burner: s1, share: 100 %} | 20 | burner.s1.lit | -1
          black smoke | {fault: blower-trip, id: f, blower: 1} | 15 | stack.black | 1
          white smoke | {fault: water-in-oil, id: f, tank: 1, share: 60 %} | 90 | stack.white | 1
          high superheat | {fault: burner-plugged, id: f, burner: s3, share: 100 %} | 120 | superheater.outlet.temperature | 1
          superheater flow lost | {outside: throttle, to: shut, over: 5 s} | 20 | superheater.metal.temperature | 1
          oil leak at the front | {fault: spray-leak, id: f, line: saturated-line, hole: 0.0625 in} | 20 | fire.oil.mass | 1
          oil fire in the bilge | {fault: fire, id: f, flow: 0.2 kg/s} | 30 | space.upper.temperature | 1
          brickwork failed | {fault: brickwork-failed, id: f, side: saturated, share: 40 %} | 300 | space.upper.temperature | 1
          salted feed | {fault: condenser-leak, id: f, chloride: 100 ppm} | 120 | drum.chloride | 1
          economizer leak | {fault: economizer-leak, id: f, hole: 0.5 in} | 60 | stack.temperature | -1
          safety valve stuck open | {fault: safety-stuck, id: f, valve: drum-1, is: open} | 30 | drum.pressure | -1
          power lost | {fault: power-lost, id: f} | 60 | space.upper.temperature | 1
          deaerating tank low | {fault: deaerating-tank-low, id: f, flow: 12 kg/s} | 60 | deaerating-tank.mass | -1
          soot fire | {fault: uptake-fire, id: f, soot: 0.03 kg/s} | 30 | stack.temperature | 1
          flooding | {fault: flooding, id: f, flow: 0.1 m3/s} | 60 | bilge.depth | 1
          gauge glass lost | {fault: gauge-wrong, id: f, gauge: drum-level, reads: high, by: 4 in} | 90 | drum.level | -1
          """)
  void itsFirstSignComesFromThePlant(
      String name, String acts, int seconds, String sign, int direction) {
    Quantity quantity = Quantity.ofId(sign).orElseThrow();
    FaultRun quiet = FaultRun.play("", seconds, "", List.of());
    FaultRun struck = FaultRun.play(acts, seconds, "", List.of());
    double change = struck.truth(quantity, seconds) - quiet.truth(quantity, seconds);
    assertThat(change * direction).as(name).isPositive();
  }
}
