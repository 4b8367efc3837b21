package handwheel.reader;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.SortedMap;

/** Hashes by which a run names the files it was made from. */
final class Sha256 {
  private Sha256() {}

  /** Returns the SHA-256 of bytes, lower-case hex. */
  static String of(byte[] bytes) {
    return HexFormat.of().formatHex(digest().digest(bytes));
  }

  /**
   * Returns the SHA-256 over several files in the order of their names: for each the length of its
   * name in bytes (4 bytes, highest first), the name in UTF-8, the length of its content (4 bytes),
   * the content.
   */
  static String of(SortedMap<String, byte[]> files) {
    MessageDigest digest = digest();
    files.forEach(
        (name, content) -> {
          add(digest, name.getBytes(StandardCharsets.UTF_8));
          add(digest, content);
        });
    return HexFormat.of().formatHex(digest.digest());
  }

  private static void add(MessageDigest digest, byte[] part) {
    digest.update(ByteBuffer.allocate(Integer.BYTES).putInt(part.length).array());
    digest.update(part);
  }

  private static MessageDigest digest() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
