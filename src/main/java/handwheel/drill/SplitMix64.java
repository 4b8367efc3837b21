package handwheel.drill;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;

/**
 * A stream of random figures. Source: Steele, Lea, Flood, "Fast splittable pseudorandom number
 * generators", OOPSLA 2014. Every purpose has a stream of its own, so that one more draw for one
 * purpose changes no other.
 */
public final class SplitMix64 {
  private static final double TWO_TO_MINUS_53 = 0x1.0p-53;

  private long state;

  SplitMix64(long seed) {
    this.state = seed;
  }

  /**
   * Makes the stream of a run for a purpose: seeded by the first eight bytes of SHA-256 over the
   * seed in decimal, a line feed and the purpose.
   *
   * @param seed seed of the run
   * @param purpose what is drawn, such as {@code pace checkman}
   * @return the stream at its start
   */
  public static SplitMix64 of(long seed, String purpose) {
    byte[] hash = sha256().digest((seed + "\n" + purpose).getBytes(StandardCharsets.UTF_8));
    long s = 0;
    for (int i = 0; i < Long.BYTES; i++) {
      s = (s << Byte.SIZE) | (hash[i] & 0xff);
    }
    return new SplitMix64(s);
  }

  long nextLong() {
    state += 0x9e3779b97f4a7c15L;
    long z = state;
    z = (z ^ (z >>> 30)) * 0xbf58476d1ce4e5b9L;
    z = (z ^ (z >>> 27)) * 0x94d049bb133111ebL;
    return z ^ (z >>> 31);
  }

  /**
   * Returns an even draw.
   *
   * @return from 0 (included) to 1 (excluded)
   */
  public double nextDouble() {
    return (nextLong() >>> 11) * TWO_TO_MINUS_53;
  }

  /** Returns an even draw from {@code low} to {@code high}. */
  double between(double low, double high) {
    return low + (high - low) * nextDouble();
  }

  long state() {
    return state;
  }

  static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
