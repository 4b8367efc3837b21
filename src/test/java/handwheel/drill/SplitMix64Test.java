package handwheel.drill;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The random stream against its published algorithm as the platform has it. */
class SplitMix64Test {
  /** Widely printed values for seed 1234567, from memory. */
  @Test
  void givesThePublishedValues() {
    SplitMix64 stream = new SplitMix64(1234567);
    assertThat(Long.toUnsignedString(stream.nextLong())).isEqualTo("6457827717110365317");
    assertThat(Long.toUnsignedString(stream.nextLong())).isEqualTo("3203168211198807973");
    assertThat(Long.toUnsignedString(stream.nextLong())).isEqualTo("9817491932198370423");
  }

  /** The platform's SplittableRandom is the same algorithm (Steele, Lea, Flood 2014). */
  @Test
  void agreesWithThePlatform() {
    SplittableRandom platform = new SplittableRandom(42);
    SplitMix64 stream = new SplitMix64(42);
    for (int i = 0; i < 1000; i++) {
      assertThat(stream.nextLong()).isEqualTo(platform.nextLong());
    }
  }

  @Test
  void onePurposeDoesNotTouchAnother() {
    long before = SplitMix64.of(7, "pace checkman").nextLong();
    SplitMix64.of(7, "hearing checkman").nextLong();
    assertThat(SplitMix64.of(7, "pace checkman").nextLong()).isEqualTo(before);
    assertThat(SplitMix64.of(8, "pace checkman").nextLong()).isNotEqualTo(before);
  }
}
