package handwheel.logbook;

import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.PublicKey;
import java.security.Signature;
import java.security.interfaces.EdECPublicKey;
import java.security.spec.EdECPoint;
import java.security.spec.EdECPublicKeySpec;
import java.security.spec.NamedParameterSpec;
import java.util.HexFormat;
import java.util.regex.Pattern;

/**
 * Public keys of Ed25519 as RFC 8032 writes them, and the signatures made with their private keys.
 */
public final class PublicKeys {
  static final String ALGORITHM = "Ed25519";

  private static final int BYTES = 32;
  private static final Pattern HEX = Pattern.compile("[0-9a-f]{64}");
  private static final Pattern SIGNATURE = Pattern.compile("[0-9a-f]{128}");

  private PublicKeys() {}

  /**
   * Returns whether a text has the form of a public key.
   *
   * @param text any text
   * @return true for 64 lower-case hex digits
   */
  public static boolean isKey(String text) {
    return HEX.matcher(text).matches();
  }

  /**
   * Writes a key of the platform.
   *
   * @param key an Ed25519 key
   * @return 64 lower-case hex digits
   */
  public static String hex(EdECPublicKey key) {
    byte[] big = key.getPoint().getY().toByteArray();
    byte[] little = new byte[BYTES];
    for (int i = 0; i < Math.min(big.length, BYTES); i++) {
      little[i] = big[big.length - 1 - i];
    }
    if (key.getPoint().isXOdd()) {
      little[BYTES - 1] |= (byte) 0x80;
    }
    return HexFormat.of().formatHex(little);
  }

  /**
   * Checks a signature.
   *
   * @param publicHex the public key
   * @param message the text that was signed, in UTF-8
   * @param signatureHex the signature
   * @return false also where key or signature are none at all
   */
  public static boolean verifies(String publicHex, String message, String signatureHex) {
    return verifies(publicHex, message.getBytes(StandardCharsets.UTF_8), signatureHex);
  }

  static boolean verifies(String publicHex, byte[] message, String signatureHex) {
    if (!isKey(publicHex) || !SIGNATURE.matcher(signatureHex).matches()) {
      return false;
    }
    try {
      Signature signature = Signature.getInstance(ALGORITHM);
      signature.initVerify(key(publicHex));
      signature.update(message);
      return signature.verify(HexFormat.of().parseHex(signatureHex));
    } catch (GeneralSecurityException e) {
      return false;
    }
  }

  private static PublicKey key(String hex) throws GeneralSecurityException {
    byte[] little = HexFormat.of().parseHex(hex);
    boolean isXOdd = little[BYTES - 1] < 0;
    byte[] big = new byte[BYTES];
    for (int i = 0; i < BYTES; i++) {
      big[i] = little[BYTES - 1 - i];
    }
    big[0] &= 0x7f;
    EdECPoint point = new EdECPoint(isXOdd, new BigInteger(1, big));
    return KeyFactory.getInstance(ALGORITHM)
        .generatePublic(new EdECPublicKeySpec(NamedParameterSpec.ED25519, point));
  }
}
