package handwheel.logbook;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.PrivateKey;
import java.security.Signature;
import java.security.spec.EdECPrivateKeySpec;
import java.security.spec.NamedParameterSpec;
import java.util.HexFormat;

/**
 * A private key that signs (Ed25519, RFC 8032). The same key and text give the same signature.
 *
 * <p>The private part is never shown, printed or compared.
 */
public final class Signer {
  private final PrivateKey key;
  private final String publicHex;

  private Signer(PrivateKey key, String publicHex) {
    this.key = key;
    this.publicHex = publicHex;
  }

  /**
   * Makes a signer.
   *
   * @param seedHex the private key, 64 hex digits
   * @param publicHex its public key, 64 lower-case hex digits
   * @return the signer
   * @throws IllegalArgumentException if the two are no keys, or do not belong together
   */
  public static Signer of(String seedHex, String publicHex) {
    Signer signer = new Signer(key(seedHex), publicHex);
    String probe = "probe";
    if (!PublicKeys.verifies(publicHex, probe, signer.sign(probe))) {
      throw new IllegalArgumentException("the private and the public key do not belong together");
    }
    return signer;
  }

  private static PrivateKey key(String seedHex) {
    try {
      EdECPrivateKeySpec spec =
          new EdECPrivateKeySpec(NamedParameterSpec.ED25519, HexFormat.of().parseHex(seedHex));
      return KeyFactory.getInstance(PublicKeys.ALGORITHM).generatePrivate(spec);
    } catch (GeneralSecurityException e) {
      throw new IllegalArgumentException("this is no private key of 64 hex digits", e);
    }
  }

  /**
   * Returns the public key.
   *
   * @return 64 lower-case hex digits
   */
  public String publicHex() {
    return publicHex;
  }

  /**
   * Signs a text.
   *
   * @param message the text; its UTF-8 bytes are signed
   * @return 128 lower-case hex digits
   */
  public String sign(String message) {
    return HexFormat.of().formatHex(signature(message.getBytes(StandardCharsets.UTF_8)));
  }

  byte[] signature(byte[] message) {
    try {
      Signature signature = Signature.getInstance(PublicKeys.ALGORITHM);
      signature.initSign(key);
      signature.update(message);
      return signature.sign();
    } catch (GeneralSecurityException e) {
      // Every Java from 15 on has Ed25519, and the key was tried when it was read.
      throw new IllegalStateException(e);
    }
  }
}
