package handwheel.reader;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 over files, each with its name and length before it. */
final class Sha256 {
  private final MessageDigest digest;

  Sha256() {
    try {
      digest = MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }

  void file(String name, byte[] bytes) {
    digest.update((name + "\n" + bytes.length + "\n").getBytes(StandardCharsets.UTF_8));
    digest.update(bytes);
  }

  String hex() {
    return HexFormat.of().formatHex(digest.digest());
  }

  static String of(byte[] bytes) {
    Sha256 one = new Sha256();
    one.digest.update(bytes);
    return one.hex();
  }
}
