package handwheel.board;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tables that run nothing, and pages that everybody can read. */
class PapersTest {
  private static final Viewer NOBODY = new Viewer("", List.of(), p -> p, r -> Optional.empty());

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "=1+1|'=1+1",
        "+A1|'+A1",
        "-A1|'-A1",
        "@x|'@x",
        "-12.5|-12.5",
        "12|12",
        "T. Vale|T. Vale"
      })
  void aCellIsNoFormula(String value, String cell) {
    assertThat(Csv.cell(value)).isEqualTo(cell);
  }

  @Test
  void quotesAndCommasAreThoseOfTheStandard() {
    assertThat(Csv.of(List.of("a", "b"), List.of(List.of("x,\"y\"", "\t=1"))))
        .isEqualTo("a,b\r\n\"x,\"\"y\"\"\",'\t=1\r\n");
  }

  @Test
  void aScoreThatIsKeptBackIsInNoTable() {
    RunRow row = RunIndexTest.row(1, "P-0001", "steam-leak", "pass");
    assertThat(Papers.runs(List.of(row), NOBODY)).doesNotContain("pass").contains("steam-leak");
    assertThat(Papers.items(List.of(row), NOBODY)).doesNotContain("clear");
  }

  @Test
  void aPackIsWholeWithoutANetAndHoldsNoMarkupOfOthers() {
    RunRow row = RunIndexTest.row(1, "<b>P</b>", "steam-leak", "pass");
    Candidate candidate = new Candidate("<b>P</b>", List.of(row), List.of());
    String html =
        BoardPack.html(
            "<script>", CandidatePage.CAUTIONS, new CandidatePage(candidate, NOBODY).sections());
    assertThat(html)
        .contains(
            "<html lang=\"en\">", "<h1>DRILL: &lt;script&gt;", "scope=\"col\"", "@media print")
        .doesNotContain("<script", "<b>", "http", "src=");
    assertThat(Pattern.compile("<h[1-6]").matcher(html).results().map(m -> m.group()).distinct())
        .containsExactly("<h1", "<h2");
  }

  /** WCAG 2.2, 1.4.3 asks for 4.5 to 1; the formula is its definition of contrast ratio. */
  @Test
  void inkAndPaperDifferEnough() {
    double lighter = luminance(BoardPack.PAPER) + 0.05;
    assertThat(lighter / (luminance(BoardPack.INK) + 0.05)).isGreaterThan(7);
  }

  private static double luminance(String hex) {
    double[] weights = {0.2126, 0.7152, 0.0722};
    double sum = 0;
    for (int i = 0; i < 3; i++) {
      double c = Integer.parseInt(hex.substring(1 + 2 * i, 3 + 2 * i), 16) / 255.0;
      sum += weights[i] * (c <= 0.04045 ? c / 12.92 : StrictMath.pow((c + 0.055) / 1.055, 2.4));
    }
    return sum;
  }

  @Test
  void aWideTableIsReadAsLines() {
    Section wide =
        new Section(
            "T", List.of("one", "two"), List.of(List.of("x".repeat(50), "y".repeat(50))), "");
    assertThat(wide.lines()).allMatch(l -> l.length() <= 80).anyMatch(l -> l.contains("one: xxx"));
    Section narrow = new Section("T", List.of("one", "two"), List.of(List.of("x", "y")), "note");
    assertThat(narrow.lines()).containsExactly("", "T", "  one  two", "  x    y", "  note");
  }
}
