package handwheel.diagnostics;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The marker stands below the word that is meant, whatever the line is like. */
class ExcerptTest {
  @Test
  void underlinesTheWord() {
    assertThat(Excerpt.of(List.of("id: x", "pass: many points"), new SourceSpot("a.yaml", 2, 7)))
        .containsExactly("    2 | pass: many points", "      |       ^^^^");
  }

  @Test
  void cutsALongLineAroundTheWord() {
    String line = "a ".repeat(60) + "WORD" + " b".repeat(60);
    List<String> shown = Excerpt.of(List.of(line), new SourceSpot("a.yaml", 1, 121));
    assertThat(shown.get(0).length()).isLessThanOrEqualTo(80);
    int at = shown.get(0).indexOf("WORD");
    assertThat(shown.get(1).substring(at)).isEqualTo("^^^^");
    assertThat(shown.get(1).indexOf('^')).isEqualTo(at);
  }

  @Test
  void countsCodePointsAndShowsNoControls() {
    String line = "\t\uD83D\uDD25 bad\u001b[31m";
    List<String> shown = Excerpt.of(List.of(line), new SourceSpot("a.yaml", 1, 4));
    assertThat(shown.get(0)).isEqualTo("    1 |  \uD83D\uDD25 bad [31m");
    assertThat(shown.get(1)).isEqualTo("      |    ^^^");
  }

  @Test
  void marksTheEndOfALineThatIsTooShort() {
    assertThat(Excerpt.of(List.of("abc"), new SourceSpot("a.yaml", 1, 40)))
        .containsExactly("    1 | abc", "      |    ^");
  }

  @Test
  void hasNothingToShowForAWholeFile() {
    assertThat(Excerpt.of(List.of("abc"), SourceSpot.wholeFile("a.yaml"))).isEmpty();
    assertThat(Excerpt.of(List.of("abc"), new SourceSpot("a.yaml", 9, 1))).isEmpty();
  }
}
