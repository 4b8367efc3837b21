package handwheel.logbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.function.IntFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every byte of a record with every kind of entry, changed one at a time. */
class RecordBytesTest {
  private static final byte[] FILE = SampleRun.record();

  @ParameterizedTest
  @ValueSource(ints = {1, 32, 128})
  void anyByteChangedShows(int mask) {
    everyPlace(FILE.length, at -> changed(at, mask));
  }

  @Test
  void anyByteTakenAwayShows() {
    everyPlace(FILE.length, RecordBytesTest::without);
  }

  @ParameterizedTest
  @ValueSource(bytes = {' ', '\n', '\r', '0', '"', '}', 0})
  void anyByteAddedShows(byte added) {
    everyPlace(FILE.length + 1, at -> with(at, added));
  }

  @Test
  void theRecordAloneHolds() {
    assertThat(RecordText.read(FILE).holds()).isTrue();
  }

  /** A cut shows as an unfinished run and never as a changed one. */
  @Test
  void aRecordCutAtAnyByteReadsBackUpToItsLastWholeLine() {
    RunRecord whole = RecordText.read(FILE);
    for (int length = 0; length < FILE.length; length++) {
      byte[] cut = Arrays.copyOf(FILE, length);
      RunRecord record = RecordText.read(cut);
      assertThat(record.isOnlyUnfinished()).as("cut at " + length).isTrue();
      int lines = Math.max(0, lineFeeds(cut) - 1);
      assertThat(record.lines()).isEqualTo(whole.lines().subList(0, lines));
      assertThat(record.about().isPresent()).isEqualTo(lineFeeds(cut) > 0);
      assertThat(record.unusedLines()).isZero();
    }
  }

  private static void everyPlace(int places, IntFunction<byte[]> spoilt) {
    for (int at = 0; at < places; at++) {
      RunRecord record = RecordText.read(spoilt.apply(at));
      assertThat(record.holds()).as("at byte " + at).isFalse();
    }
  }

  private static byte[] changed(int at, int mask) {
    byte[] file = FILE.clone();
    file[at] ^= (byte) mask;
    return file;
  }

  private static byte[] without(int at) {
    byte[] file = Arrays.copyOf(FILE, FILE.length - 1);
    System.arraycopy(FILE, at + 1, file, at, file.length - at);
    return file;
  }

  private static byte[] with(int at, byte added) {
    byte[] file = Arrays.copyOf(FILE, FILE.length + 1);
    file[at] = added;
    System.arraycopy(FILE, at, file, at + 1, FILE.length - at);
    return file;
  }

  private static int lineFeeds(byte[] bytes) {
    int n = 0;
    for (byte b : bytes) {
      n += b == '\n' ? 1 : 0;
    }
    return n;
  }
}
