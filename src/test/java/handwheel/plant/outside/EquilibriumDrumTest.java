package handwheel.plant.outside;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import handwheel.plant.DrumInputs;
import org.junit.jupiter.api.Test;

/** Our writing of the published start-up against figures of an independent program. */
class EquilibriumDrumTest {
  /** Time s, bar, steam kg/s, water m3, per cent allowed; computed from the published figures. */
  private static final double[][] ROWS = {
    {600, 3.954, 4.61, 68.76, 2},
    {900, 11.332, 21.66, 68.00, 2},
    {1200, 23.788, 46.58, 60.94, 2},
    {1800, 40.925, 80.85, 66.24, 0.5},
    {2700, 64.211, 127.42, 66.37, 0.1},
    {3600, 87.884, 174.77, 66.36, 0.1},
    {5400, 89.648, 178.30, 67.000, 0.1}
  };

  @Test
  void theStartUpGoesAsComputed() {
    EquilibriumDrum model = new EquilibriumDrum();
    double s = 0;
    for (double[] row : ROWS) {
      for (; s < row[0]; s += 0.25) {
        model.step(0.25);
      }
      assertThat(model.pressurePa()).as("%s s", s).isCloseTo(row[1] * 1e5, withPercentage(row[4]));
      assertThat(model.inputs().steamKgPerS()).isCloseTo(row[2], withPercentage(row[4]));
      assertThat(model.waterM3()).isCloseTo(row[3], withPercentage(row[4]));
    }
    byHand(model.inputs(), model.pressurePa());
  }

  /** At the end heat over enthalpy rise is the steam, and the valve sets the pressure. */
  private static void byHand(DrumInputs end, double pressurePa) {
    double steamJPerKg = 2_743_400; // saturated steam at 89.65 bar, steam tables
    assertThat(end.steamKgPerS()).isCloseTo(400e6 / (steamJPerKg - 500e3), withPercentage(0.1));
    assertThat(pressurePa).isCloseTo(0.5e5 + 90e5 * end.steamKgPerS() / 180, withPercentage(0.01));
  }
}
