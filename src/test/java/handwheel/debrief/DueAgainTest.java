package handwheel.debrief;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import handwheel.casualty.Basis;
import handwheel.diagnostics.SourceSpot;
import handwheel.scoring.Charge;
import handwheel.scoring.ErrorClass;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * When a drill is due again. The halving times are those of Tatel and Ackerman's meta-analysis
 * (from its abstract); the months for 90, 80 and 70 % were reckoned apart from this code.
 */
final class DueAgainTest {
  @ParameterizedTest
  @CsvSource({
    "6.5, 0.9, 0.99", "6.5, 0.8, 2.09", "6.5, 0.7, 3.34",
    "13, 0.9, 1.98", "13, 0.8, 4.19", "13, 0.7, 6.69",
    "6.5, 0.5, 6.5", "13, 1, 0"
  })
  void monthsUntilAShareIsLeft(double half, double kept, double months) {
    assertThat(DueAgain.months(half, kept)).isCloseTo(months, within(0.005));
  }

  @Test
  void bothClocksRunAndTheEarlierCounts() {
    DueAgain clean = DueAgain.after(List.of(), 90);
    assertThat(clean).isEqualTo(new DueAgain(63, 60, 90));
    assertThat(clean.days()).isEqualTo(60);
    assertThat(DueAgain.after(List.of(), 30).days()).isEqualTo(30);
  }

  @Test
  void whatWasLostIsDueAtOnce() {
    assertThat(DueAgain.after(List.of(charge(ErrorClass.LATE)), 90))
        .isEqualTo(new DueAgain(63, 0, 90));
    assertThat(DueAgain.after(List.of(charge(ErrorClass.OMITTED)), 90))
        .isEqualTo(new DueAgain(0, 60, 90));
    assertThat(DueAgain.after(List.of(charge(ErrorClass.NO_FAULT)), 90).days()).isEqualTo(60);
  }

  @Test
  void itIsSaidWithItsAssumption() {
    LocalDate day = LocalDate.of(2026, 11, 25);
    List<String> lines = DueAgain.after(List.of(), 90).lines(Optional.of(day));
    assertThat(lines.get(0)).startsWith("Due again by 2027-01-24").contains("2027-01-27");
    assertThat(lines.get(1)).contains("Assumed").contains("not measured on you");
    assertThat(DueAgain.after(List.of(), 90).lines(Optional.empty()).get(0))
        .startsWith("Due again after 60 days");
  }

  private static Charge charge(ErrorClass type) {
    SourceSpot spot = SourceSpot.wholeFile("x");
    return new Charge(1, type, "step", 0, "", spot, "", Basis.TRADE_RULE, false);
  }
}
