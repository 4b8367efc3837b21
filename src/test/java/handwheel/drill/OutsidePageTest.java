package handwheel.drill;

import static org.assertj.core.api.Assertions.assertThat;

import handwheel.plant.BoilerChecks;
import handwheel.plant.Difference;
import handwheel.plant.FireChecks;
import handwheel.plant.GoldenPage;
import handwheel.plant.OutsideCheck;
import handwheel.plant.PlantDifferences;
import handwheel.plant.SpaceChecks;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The crew against published figures, and the page that tells every such check. */
class OutsidePageTest {
  static List<OutsideCheck> walking() {
    return WalkingChecks.all();
  }

  @ParameterizedTest
  @MethodSource("walking")
  void theCrewAgreeAndADifferentCrewIsNoticed(OutsideCheck check) {
    assertThat(check.holds()).as(check::row).isTrue();
    assertThat(check.failing()).as(check::row).isNotEmpty();
  }

  /**
   * IMO MSC.1/Circ.1533 annex 3, male crew: 1.11 to 1.85, 0.76 to 1.26, 0.50 to 0.84 m/s (read).
   */
  @Test
  void everyDrawnPaceIsInThePublishedRangeAndTheRangeIsUsed() {
    List<Pace> crew =
        IntStream.range(0, 20_000).mapToObj(seed -> Pace.drawn(new SplitMix64(seed))).toList();
    assertThat(crew)
        .allMatch(p -> p.flatMPerS() >= 1.11 && p.flatMPerS() <= 1.85)
        .allMatch(p -> p.downMPerS() >= 0.76 && p.downMPerS() <= 1.26)
        .allMatch(p -> p.upMPerS() >= 0.50 && p.upMPerS() <= 0.84)
        .anyMatch(p -> p.flatMPerS() < 1.12)
        .anyMatch(p -> p.flatMPerS() > 1.84);
  }

  @Test
  void thePageTellsEveryCheck() {
    String checks =
        Stream.of(BoilerChecks.all(), FireChecks.all(), SpaceChecks.all(), WalkingChecks.all())
            .flatMap(List::stream)
            .map(OutsideCheck::row)
            .collect(Collectors.joining());
    String differences =
        Stream.of(PlantDifferences.all(), DrillDifferences.all())
            .flatMap(List::stream)
            .map(Difference::row)
            .collect(Collectors.joining());
    GoldenPage.check("checks-spaces", HEAD + checks + DIFFERENT + differences);
  }

  private static final String HEAD =
      """
      # Fire, fire room, boiler and crew against published figures

      Written by a test. Each line holds a figure of the program to one from outside it. "Alter" names
      a constant and "fails with" the factors on it, of 0.95 and 1.05, with which the check fails: a
      check that cannot fail holds nothing. Sizes of the plant (names with dots) are altered in the
      plant itself; constants of a machine are altered in what it shows.

      How far a published figure can be trusted: read, its source was open when it was written down;
      computed, worked out with a formula or table that was read; from memory, nobody has looked it
      up.

      | check | alter | published | found | allowed, % | fails with | source | figure |
      |---|---|---|---|---|---|---|---|
      """;

  private static final String DIFFERENT =
      """

      ## Where the program differs

      Known and left so. The figures are what the program does now.

      | what | published | found | why |
      |---|---|---|---|
      """;
}
