package handwheel.plant;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The plant against published figures, each with its source, and each shown to notice a machine
 * five per cent off.
 */
class PlantOutsideTest {
  static Stream<OutsideCheck> checks() {
    return Stream.of(BoilerChecks.all(), FireChecks.all(), SpaceChecks.all()).flatMap(List::stream);
  }

  @ParameterizedTest
  @MethodSource("checks")
  void thePlantAgrees(OutsideCheck check) {
    assertThat(check.holds()).as(check::row).isTrue();
  }

  @ParameterizedTest
  @MethodSource("checks")
  void aMachineFivePerCentOffIsNoticed(OutsideCheck check) {
    assertThat(check.failing()).as(check::row).isNotEmpty();
  }
}
