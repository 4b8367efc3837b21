package handwheel.plant.outside;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** The plant against the world outside, and that every one of these checks can fail. */
class OutsideChecksTest {
  private static final double MORE = 1.05;
  private static final double LESS = 0.95;

  @Test
  void thePlantAgreesWithTheWorldOutside() {
    List<Figure> figures = OutsideChecks.figures();
    List<String> lines = new ArrayList<>();
    lines.add("| check | what | plant | outside | apart | allowed |");
    lines.add("|---|---|---|---|---|---|");
    figures.forEach(figure -> lines.add(line(figure)));
    MarkedTable.check("accuracy.md", "figures", lines);
    assertThat(figures).allMatch(Figure::holds);
  }

  /** The page names every check in its first table. */
  @Test
  void everyCheckIsOnThePage() throws IOException {
    String page = Files.readString(Path.of("docs", "plant", "checks.md"));
    for (Figure figure : OutsideChecks.figures()) {
      assertThat(page).contains("\n| " + figure.check() + " |");
    }
  }

  private static String line(Figure f) {
    return "| "
        + String.join(
            " | ",
            f.check(),
            f.what(),
            figure(f.found(), 6),
            figure(f.outside(), 6),
            figure(f.found() - f.outside(), 2),
            figure(f.allowed(), 2))
        + " |";
  }

  private static String figure(double value, int digits) {
    return Math.abs(value) < 1e-9
        ? "0"
        : new BigDecimal(value).round(new MathContext(digits)).toPlainString();
  }

  /**
   * Changes one constant after another by five per cent, up, or down where up goes unnoticed, and
   * asks the checks that look at its machine. A check that no constant makes fail would be no
   * check.
   */
  @Test
  void everyCheckFailsWhenAConstantIsChanged() {
    List<String> lines = new ArrayList<>();
    lines.add("| constant | where | value | changed by | fails |");
    lines.add("|---|---|---|---|---|");
    TreeSet<String> bitten = new TreeSet<>();
    for (Alteration alteration : Alteration.ALL) {
      String by = "+5 %";
      List<String> failing = new AlteredClasses(alteration, MORE).failing();
      if (failing.isEmpty()) {
        by = "-5 %";
        failing = new AlteredClasses(alteration, LESS).failing();
      }
      bitten.addAll(failing);
      lines.add(line(alteration, failing.isEmpty() ? "either way" : by, failing));
    }
    MarkedTable.check("checks.md", "changes noticed", lines);
    TreeSet<String> checks = new TreeSet<>();
    OutsideChecks.figures().forEach(figure -> checks.add(figure.check()));
    assertThat(bitten).isEqualTo(checks);
  }

  private static String line(Alteration a, String by, List<String> failing) {
    String where = a.classes().isEmpty() ? "" : "`" + String.join("`, `", a.classes()) + "`";
    String what = failing.isEmpty() ? "nothing outside" : String.join("; ", failing);
    return "| " + String.join(" | ", a.what(), where, "`" + a.value() + "`", by, what) + " |";
  }
}
