package handwheel.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** The exact replacements of power and exponential, against the strict library functions. */
class CurveTest {
  @Test
  void fifthRootAgreesWithPower() {
    for (double x = 1e-9; x < 1e9; x *= 1.37) {
      assertThat(Curve.fifthRoot(x) / StrictMath.pow(x, 0.2)).isCloseTo(1, within(2e-15));
    }
    assertThat(Curve.fifthRoot(0)).isZero();
    assertThat(Curve.fifthRoot(-3)).isZero();
  }

  @Test
  void decayAgreesWithTheExponential() {
    for (double z = 0; z < 47.9; z += 0.00371) {
      assertThat(Decay.of(z) / StrictMath.exp(-z)).isCloseTo(1, within(4e-13));
    }
    assertThat(Decay.of(48)).isZero();
    assertThat(Decay.of(1e300)).isZero();
  }

  @Test
  void meanDecayIsTheIntegralOfTheDecay() {
    assertThat(Decay.mean(0)).isEqualTo(1);
    assertThat(Decay.mean(2)).isCloseTo((1 - StrictMath.exp(-2)) / 2, within(1e-12));
    assertThat(Decay.mean(1e-5)).isCloseTo(1 - 0.5e-5, within(1e-7));
  }

  @Test
  void smoothStepIsFlatOutsideItsRange() {
    assertThat(Curve.smoothStep(-1)).isZero();
    assertThat(Curve.smoothStep(0.5)).isEqualTo(0.5);
    assertThat(Curve.smoothStep(2)).isEqualTo(1);
  }
}
