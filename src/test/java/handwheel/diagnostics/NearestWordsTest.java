package handwheel.diagnostics;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Nearest words; optimal string alignment as in Damerau, CACM 7 (1964) 171-176. */
class NearestWordsTest {
  /** CA to ABC is 3 in this distance (own worked example of the restriction). */
  @Test
  void distanceCountsInsertDeleteReplaceSwap() {
    assertThat(NearestWords.distance("kitten", "sitting")).isEqualTo(3);
    assertThat(NearestWords.distance("shut", "shtu")).isEqualTo(1);
    assertThat(NearestWords.distance("CA", "ABC")).isEqualTo(3);
    assertThat(NearestWords.distance("", "abc")).isEqualTo(3);
  }

  @Test
  void offersTheNearestFirst() {
    List<String> valid = List.of("main-stop", "main-run", "bulkhead-stop");
    assertThat(NearestWords.to("man-stop", valid)).containsExactly("main-stop");
    assertThat(NearestWords.offer("xyz", valid)).startsWith("Valid here: ");
  }
}
