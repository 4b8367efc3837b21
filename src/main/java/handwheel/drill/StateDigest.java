package handwheel.drill;

import handwheel.plant.StateWalker;
import java.security.MessageDigest;
import java.util.HexFormat;

/** SHA-256 over the raw bits of every state, in walking order. */
final class StateDigest implements StateWalker {
  private final MessageDigest sha256 = SplitMix64.sha256();
  private final byte[] bits = new byte[Long.BYTES];

  @Override
  public double visit(String name, double value) {
    long raw = Double.doubleToRawLongBits(value);
    for (int i = 0; i < Long.BYTES; i++) {
      bits[i] = (byte) (raw >>> (Byte.SIZE * i));
    }
    sha256.update(bits);
    return value;
  }

  String hex() {
    return HexFormat.of().formatHex(sha256.digest());
  }
}
