package handwheel.logbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class Sha256Test {
  /** Messages and digests of NIST's examples to FIPS 180-4 (one block, two blocks) and of "". */
  @ParameterizedTest
  @CsvSource({
    "'', e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855",
    "abc, ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
    "abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq,"
        + " 248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1",
  })
  void givesThePublishedDigests(String message, String digest) {
    assertThat(Sha256.hex(message.getBytes(StandardCharsets.US_ASCII))).isEqualTo(digest);
  }

  @Test
  void takesItsPartsAsOneMessage() {
    assertThat(Sha256.hex(new byte[] {'a'}, new byte[0], new byte[] {'b', 'c'}))
        .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
  }

  /** A million times "a": NIST's long example to FIPS 180-4. */
  @Test
  void givesThePublishedDigestOfALongMessage() {
    assertThat(Sha256.hex("a".repeat(1_000_000).getBytes(StandardCharsets.US_ASCII)))
        .isEqualTo("cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0");
  }
}
