package handwheel.logbook;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 (FIPS 180-4) as lower-case hex. */
final class Sha256 {
  private Sha256() {}

  static String hex(byte[]... parts) {
    MessageDigest digest = digest();
    for (byte[] part : parts) {
      digest.update(part);
    }
    return HexFormat.of().formatHex(digest.digest());
  }

  private static MessageDigest digest() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      // Every Java platform must have SHA-256.
      throw new IllegalStateException(e);
    }
  }
}
