package handwheel.archive;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RecordNameTest {
  @ParameterizedTest
  @CsvSource({
    "41, steam-leak, 7, 0041-steam-leak-7.hwr",
    "12345, steam-leak, 7, 12345-steam-leak-7.hwr",
    "1, steam-leak, -1, 0001-steam-leak-18446744073709551615.hwr",
    "1, ../..\\Etc, 0, 0001-------etc-0.hwr",
  })
  void aNameIsMadeOfNumberScriptAndSeed(int no, String script, long seed, String name) {
    assertThat(RecordName.of(no, script, seed)).isEqualTo(name);
    assertThat(RecordName.number(name)).hasValue(no);
  }

  @Test
  void aNameIsNeverTooLong() {
    assertThat(RecordName.of(Integer.MAX_VALUE, "x".repeat(500), -1)).hasSizeLessThan(100);
  }

  @ParameterizedTest
  @ValueSource(strings = {"ledger", "ledger.lock", "41-steam-leak-7.hwr", "0041-a.txt", "0041.hwr"})
  void otherFilesHaveNoNumber(String name) {
    assertThat(RecordName.number(name)).isEmpty();
  }
}
