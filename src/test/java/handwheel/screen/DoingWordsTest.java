package handwheel.screen;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a man is seen to do, in words. */
final class DoingWordsTest {
  private final DoingWords words = new DoingWords(SteamLeak.FOUND.ship());

  @ParameterizedTest
  @CsvSource({
    "standing by, standing by",
    "shut main-stop, shutting main steam stop",
    "'hurt, trip fuel-trip-saturated', 'hurt, tripping saturated fuel trip'",
    "'hurt, on his way', 'hurt, on his way'",
    "heard you, heard you",
    "down, down"
  })
  void jobsAreSeenAsDeeds(String doing, String seen) {
    assertThat(words.of(doing)).isEqualTo(seen);
  }
}
