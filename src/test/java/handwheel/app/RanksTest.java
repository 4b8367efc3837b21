package handwheel.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Published worked examples of rank correlations, values from memory. */
class RanksTest {
  /** Ten pairs of a test score and hours watched, the much reprinted example: -29/165. */
  @Test
  void withoutTies() {
    double[] scores = {106, 100, 86, 101, 99, 103, 97, 113, 112, 110};
    double[] hours = {7, 27, 2, 50, 28, 29, 20, 12, 6, 17};
    assertThat(Ranks.spearman(scores, hours)).isCloseTo(-29 / 165.0, within(1e-12));
  }

  /** The example in SciPy's documentation of spearmanr. */
  @Test
  void withTies() {
    double[] x = {1, 2, 3, 4, 5};
    double[] y = {5, 6, 7, 8, 7};
    assertThat(Ranks.spearman(x, y)).isCloseTo(0.82078268, within(1e-8));
  }

  /** The example in SciPy's documentation of kendalltau. */
  @Test
  void kendallsTauWithTies() {
    double[] x = {12, 2, 1, 12, 2};
    double[] y = {1, 4, 7, 1, 0};
    assertThat(Ranks.kendall(x, y)).isCloseTo(-0.4714045207910317, within(1e-12));
  }
}
