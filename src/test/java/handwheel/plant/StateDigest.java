package handwheel.plant;

import java.nio.ByteBuffer;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 over the raw bits of every state and port of a plant. */
public final class StateDigest {
  private StateDigest() {}

  /** Returns the digest in hexadecimal. */
  public static String of(Plant plant) {
    MessageDigest sha = sha256();
    ByteBuffer bits = ByteBuffer.allocate(Long.BYTES);
    plant.walk(
        (name, value) -> {
          sha.update(bits.putLong(0, Double.doubleToRawLongBits(value)).array());
          return value;
        });
    return HexFormat.of().formatHex(sha.digest());
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
