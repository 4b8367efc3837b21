package handwheel.plant.outside;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import handwheel.plant.DrumInputs;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Our writing of the published four-state drum against the published steady state and steps. */
class AstromBellTest {
  /** Steady state of the paper's unit at 8.5 MPa; read, with downcomer area and level computed. */
  @Test
  void thePublishedSteadyStateIsFound() {
    AstromBell model = PublishedUnit.atRest();
    assertThat(model.pressurePa()).isCloseTo(8.5e6, within(100.0));
    assertThat(PublishedUnit.REST.heatW()).isCloseTo(85.912e6, withPercentage(0.01));
    assertThat(model.quality()).isCloseTo(0.051, within(0.0001));
    assertThat(model.circulationKgPerS()).isCloseTo(1194.5, within(2.5));
    assertThat(model.condensationKgPerS()).isCloseTo(10.5, within(0.01));
    assertThat(model.restSteamM3()).isCloseTo(7.6627, within(0.002));
    assertThat(model.levelM()).isCloseTo(1.2003, within(0.006));
    assertThat(model.riserVoid()).isCloseTo(0.2704, within(0.0005));
  }

  /**
   * Steps of the paper's unit: +10 MW, +10 kg/s of steam, +10 kg/s of feed. Computed once from the
   * published sizes by an independent program (the paper shows curves, no numbers).
   */
  @ParameterizedTest
  @CsvSource({
    "heat, 5, 8.5149, 8.53", "heat, 10, 8.5298, 9.50", "heat, 20, 8.5598, 6.07",
    "heat, 50, 8.6505, 2.01", "heat, 100, 8.8045, 5.61", "heat, 200, 9.1241, 15.15",
    "steam, 5, 8.4776, 25.32", "steam, 10, 8.4552, 33.65", "steam, 20, 8.4103, 31.94",
    "steam, 50, 8.2752, 6.33", "steam, 100, 8.0492, -35.51", "steam, 200, 7.5941, -115.68",
    "feed, 5, 8.4971, -1.79", "feed, 10, 8.4941, -2.62", "feed, 20, 8.4883, -1.12",
    "feed, 50, 8.4706, 16.12", "feed, 100, 8.4413, 52.36", "feed, 200, 8.3827, 125.55"
  })
  void stepsGoAsComputed(String step, int s, double mpa, double mm) {
    AstromBell model = PublishedUnit.atRest();
    double level = model.levelM();
    DrumInputs inputs = PublishedUnit.step(step);
    for (int i = 0; i < 20 * s; i++) {
      model.step(inputs);
    }
    assertThat(model.pressurePa())
        .isCloseTo(mpa * 1e6, within(0.01 * Math.abs(mpa - 8.5) * 1e6 + 100));
    assertThat(1000 * (model.levelM() - level)).isCloseTo(mm, within(0.3 + 0.01 * Math.abs(mm)));
  }

  /**
   * Peaks by the same independent program: 34.7 mm at 13.25 s, 9.6 at 8.5, -2.6 at "about 10"; back
   * through zero after steam at 57.5 s and after feed at 23.25 s.
   */
  @ParameterizedTest
  @CsvSource({"steam, 34.7, 13.25, 0.25", "heat, 9.6, 8.5, 0.25", "feed, -2.6, 10, 1.5"})
  void swellAndShrinkPeakWhereComputed(String step, double mm, double s, double within) {
    List<Double> levels = levels(step, 25);
    double peak = mm > 0 ? Collections.max(levels) : Collections.min(levels);
    assertThat(peak).isCloseTo(mm, within(0.1));
    assertThat((levels.indexOf(peak) + 1) / 20.0).isCloseTo(s, within(within));
  }

  @ParameterizedTest
  @CsvSource({"steam, 57.5", "feed, 23.25"})
  void theLevelGoesBackThroughZeroWhereComputed(String step, double s) {
    List<Double> levels = levels(step, 70);
    double first = levels.get(0);
    int back = 0;
    while (levels.get(back) * first > 0) {
      back++;
    }
    assertThat((back + 1) / 20.0).isCloseTo(s, within(0.25));
  }

  /** Level above that at rest after each twentieth of a second, mm. */
  private static List<Double> levels(String step, int seconds) {
    AstromBell model = PublishedUnit.atRest();
    double level = model.levelM();
    List<Double> levels = new ArrayList<>();
    for (int i = 0; i < 20 * seconds; i++) {
      model.step(PublishedUnit.step(step));
      levels.add(1000 * (model.levelM() - level));
    }
    return levels;
  }
}
