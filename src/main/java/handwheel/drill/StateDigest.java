package handwheel.drill;

import handwheel.plant.StateWalker;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.security.MessageDigest;
import java.util.HexFormat;

/** SHA-256 over the raw bits of every state, in walking order. */
final class StateDigest implements StateWalker {
  /** Hashed at one go; the hash does not depend on it. */
  private static final int STATES = 128;

  private final MessageDigest sha256 = SplitMix64.sha256();
  private final ByteBuffer bits =
      ByteBuffer.allocate(STATES * Long.BYTES).order(ByteOrder.LITTLE_ENDIAN);

  @Override
  public double visit(String name, double value) {
    if (!bits.hasRemaining()) {
      take();
    }
    bits.putLong(Double.doubleToRawLongBits(value));
    return value;
  }

  private void take() {
    sha256.update(bits.flip());
    bits.clear();
  }

  String hex() {
    take();
    return HexFormat.of().formatHex(sha256.digest());
  }
}
