package handwheel.screen;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** No text reaches a terminal as a command, and its length is its width. */
final class TextTest {
  @Test
  void everyControlCharacterIsReplaced() {
    for (char c = 0; c < 0xFFFF; c++) {
      String safe = Text.harmless("a" + c + "b");
      assertThat(safe).hasSize(3);
      assertThat(Character.isISOControl(safe.charAt(1))).as("U+%04x", (int) c).isFalse();
    }
  }

  @Test
  void escapeSequencesAndTurnsOfDirectionLoseTheirPower() {
    assertThat(Text.harmless("\u001b[2J\u009b31m\u202eabc\u200b")).isEqualTo("?[2J?31m?abc?");
    assertThat(Text.harmless("one\ttwo\r\nthree")).isEqualTo("one two  three");
  }

  @Test
  void whatMayTakeTwoCellsOrNoneIsReplacedByOne() {
    // The widths of wide, combining and pictorial characters differ between terminals.
    assertThat(Text.oneCell("é°─│")).isEqualTo("é°─│");
    assertThat(Text.oneCell("日😀e\u0301\u00ad")).isEqualTo("??e??");
  }

  @Test
  void asciiKeepsTheWidth() {
    String text = "Größe ──│┼ “x” – …日";
    assertThat(Ascii.of(Text.oneCell(text)))
        .isEqualTo("Gro?e --|+ \"x\" - .?")
        .hasSize(text.length());
  }

  @Test
  void aWordLongerThanARowIsCut() {
    assertThat(Text.wrapped("a " + "b".repeat(25) + " c", 10, 2))
        .allMatch(row -> row.length() <= 10)
        .anyMatch(row -> row.endsWith("c"));
    assertThat(Text.wrapped("one two three four", 10, 2))
        .containsExactly("one two", "  three", "  four");
  }
}
