package handwheel.logbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Signatures against RFC 8032, section 7.1, and signed records against every change. */
class SignatureTest {
  private static final Signer SIGNER =
      Signer.of(
          "9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60",
          "d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a");
  private static final Signer OTHER =
      Signer.of(
          "4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb",
          "3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c");

  @ParameterizedTest
  @CsvSource({
    // TEST 1
    "9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60,"
        + "d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a,'',"
        + "e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39701cf9b46bd25bf5f0595bbe24655141438e7a100b",
    // TEST 2
    "4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb,"
        + "3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c,72,"
        + "92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac1e43e15996e458f3613d0f11d8c387b2eaeb4302aeeb00d291612bb0c00",
    // TEST 3
    "c5aa8df43f9f837bedb7442f31dcb7b166d38535076f094b85ce3a2e0b4458f7,"
        + "fc51cd8e6218a1a38da47ed00230f0580816ed13ba3303ac5deb911548908025,af82,"
        + "6291d657deec24024827e69c3abe01a30ce548a284743a445e3680d7db5ac3ac18ff9b538d16f290ae67f760984dc6594a7c15e9716ed28dc027beceea1ec40a"
  })
  void signsAndVerifiesAsPublished(String seed, String key, String message, String signature) {
    byte[] bytes = HexFormat.of().parseHex(message);
    Signer signer = Signer.of(seed, key);
    assertThat(HexFormat.of().formatHex(signer.signature(bytes))).isEqualTo(signature);
    assertThat(PublicKeys.verifies(key, bytes, signature)).isTrue();
    assertThat(PublicKeys.verifies(key, new byte[] {1}, signature)).isFalse();
  }

  @Test
  void keysThatDoNotBelongTogetherAreRefused() {
    assertThatThrownBy(() -> Signer.of("00".repeat(32), SIGNER.publicHex()))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Signer.of("00", "11")).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void aSignedRecordHoldsAndSaysSo() {
    RunRecord record = RecordText.read(signed(SIGNER.publicHex(), SIGNER));
    assertThat(record.problems()).isEmpty();
    assertThat(record.signed()).isPresent();
    assertThat(record.endH()).isPresent();
  }

  @Test
  void anyByteChangedInASignedRecordShows() {
    byte[] file = signed(SIGNER.publicHex(), SIGNER);
    for (int at = 0; at < file.length; at++) {
      byte[] changed = file.clone();
      changed[at] ^= 1;
      assertThat(RecordText.read(changed).problems()).as("at byte " + at).isNotEmpty();
    }
  }

  @Test
  void aCutAtAnyByteLeavesAllLinesBeforeItAndShows() {
    byte[] file = signed(SIGNER.publicHex(), SIGNER);
    for (int length = 0; length < file.length; length++) {
      RunRecord cut = RecordText.read(java.util.Arrays.copyOf(file, length));
      int whole =
          (int)
              new String(file, 0, length, StandardCharsets.UTF_8)
                  .chars()
                  .filter(c -> c == '\n')
                  .count();
      assertThat(cut.holds()).as("cut at " + length).isFalse();
      assertThat(cut.lines().size())
          .as("cut at " + length)
          .isEqualTo(Math.max(0, Math.min(whole - 1, SampleRun.entries().size())));
    }
  }

  @Test
  void aSignatureTakenAwayShows() {
    List<String> lines = lines(signed(SIGNER.publicHex(), SIGNER));
    lines.remove(lines.size() - 1);
    assertThat(kinds(lines)).containsExactly(Problem.Kind.SIGNATURE_MISSING);
  }

  @Test
  void aSignatureOfAnotherKeyShows() {
    assertThat(RecordText.read(signed(SIGNER.publicHex(), OTHER)).problems())
        .extracting(Problem::kind)
        .containsExactly(Problem.Kind.SIGNATURE_WRONG);
    assertThat(RecordText.read(signed("", OTHER)).problems())
        .extracting(Problem::kind)
        .containsExactly(Problem.Kind.SIGNATURE_WRONG);
  }

  @Test
  void aSecondSignatureShows() {
    List<String> lines = lines(signed(SIGNER.publicHex(), SIGNER));
    lines.add(lines.get(lines.size() - 1));
    assertThat(kinds(lines)).contains(Problem.Kind.SIGNATURE_WRONG);
  }

  private static List<Problem.Kind> kinds(List<String> lines) {
    byte[] file = (String.join("\n", lines) + "\n").getBytes(StandardCharsets.UTF_8);
    return RecordText.read(file).problems().stream().map(Problem::kind).toList();
  }

  private static List<String> lines(byte[] file) {
    return new ArrayList<>(new String(file, StandardCharsets.UTF_8).lines().toList());
  }

  private static byte[] signed(String key, Signer signer) {
    About about = new About(41, Chain.START, "P-0001", "2031-02-03T08:15:00Z", "P-0001", "", key);
    StringBuilder text = new StringBuilder();
    Chain alone = new Chain();
    text.append(alone.append(about.line())).append('\n');
    ChainedEntries chained = new ChainedEntries(line -> text.append(line).append('\n'));
    SampleRun.entries().forEach(chained::accept);
    chained.end(new End("over", "", alone.last()));
    chained.sign(signer);
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }
}
