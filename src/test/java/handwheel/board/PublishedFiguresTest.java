package handwheel.board;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Figures against published examples and against reference calculations of them. */
class PublishedFiguresTest {
  private static final Offset<Double> FOUR_PLACES = within(0.00005);

  /** A public teaching file for KR-20: ten people, ten items; published: 2.18 and 5.84. */
  private static final List<String> TEN_BY_TEN =
      List.of(
          "1111110110",
          "1011011101",
          "1111011001",
          "0010001000",
          "0000010010",
          "1110111111",
          "1101110111",
          "1111111101",
          "0101111101",
          "1101101110");

  private final ItemFigures figures = new ItemFigures(rows(TEN_BY_TEN));

  @Test
  void reliabilityIsThatOfTheTeachingFile() {
    assertThat(figures.variance()).isEqualTo(5.84, FOUR_PLACES);
    assertThat(value(figures.kr20())).isEqualTo(0.696347, within(0.0000005));
    assertThat(value(figures.kr21())).isEqualTo(0.6842, FOUR_PLACES);
    assertThat(value(figures.standardError())).isEqualTo(1.331666, within(0.0000005));
  }

  /** Reference calculation of the same file; items 7 and 9 turn negative without themselves. */
  @ParameterizedTest
  @CsvSource({
    "0, .7946, .7059", "1, .7946, .7059", "2, .2027, .0000", "3, .6140, .4736", "4, .7095, .5839",
    "5, .4345, .2861", "6, .1625, -.0274", "7, .7946, .7059", "8, .0828, -.1236", "9, .6251, .4759"
  })
  void discriminationLeavesTheItemItselfOut(int item, double withItself, double without) {
    assertThat(value(figures.itemTotal(item))).isEqualTo(withItself, FOUR_PLACES);
    assertThat(value(figures.discrimination(item))).isEqualTo(without, FOUR_PLACES);
  }

  /** The first two: Newcombe 1998, table I, method 3. The others: the same formula elsewhere. */
  @ParameterizedTest
  @CsvSource({
    "81, 263, .2553, .3662",
    "15, 148, .0624, .1605",
    "3, 3, .4385, 1",
    "5, 5, .5655, 1",
    "10, 10, .7225, 1",
    "8, 10, .4902, .9433",
    "29, 30, .8333, .9941"
  })
  void wilsonIntervals(int successes, int of, double low, double high) {
    Interval interval = Interval.wilson(successes, of);
    assertThat(interval.low()).isEqualTo(low, FOUR_PLACES);
    assertThat(interval.high()).isEqualTo(high, FOUR_PLACES);
  }

  /** The common two-by-two example, and the pair that shows kappa's paradox. */
  @Test
  void cohensKappa() {
    assertThat(value(Agreement.cohen(new int[][] {{20, 5}, {10, 15}}))).isEqualTo(0.4, FOUR_PLACES);
    assertThat(value(Agreement.cohen(new int[][] {{45, 15}, {25, 15}})))
        .isEqualTo(0.1304, FOUR_PLACES);
    assertThat(value(Agreement.cohen(new int[][] {{25, 35}, {5, 35}})))
        .isEqualTo(0.2593, FOUR_PLACES);
  }

  /** The standard table of ten subjects and fourteen raters: 0.210. */
  @Test
  void fleissKappa() {
    List<int[]> table =
        List.of(
            new int[] {0, 0, 0, 0, 14},
            new int[] {0, 2, 6, 4, 2},
            new int[] {0, 0, 3, 5, 6},
            new int[] {0, 3, 9, 2, 0},
            new int[] {2, 2, 8, 1, 1},
            new int[] {7, 7, 0, 0, 0},
            new int[] {3, 2, 6, 3, 0},
            new int[] {2, 5, 3, 2, 2},
            new int[] {6, 5, 2, 1, 0},
            new int[] {0, 2, 2, 3, 7});
    assertThat(value(Agreement.fleiss(table))).isEqualTo(0.210, within(0.0005));
  }

  @Test
  void whatIsNotDefinedSaysSo() {
    ItemFigures alike = new ItemFigures(rows(List.of("110", "110", "110")));
    assertThat(alike.kr20().text(2)).isEqualTo("not defined: all runs scored alike");
    assertThat(alike.standardError().value()).isEmpty();
    assertThat(alike.discrimination(0).text(2))
        .isEqualTo("not defined: every run has the same mark here");
    assertThat(new ItemFigures(List.of()).kr20().value()).isEmpty();
    assertThat(new ItemFigures(rows(List.of("10"))).discrimination(0).value()).isEmpty();
    assertThat(Agreement.cohen(new int[][] {{9, 0}, {0, 0}}).value()).isEmpty();
    assertThat(Agreement.cohen(new int[][] {{0, 0}, {0, 0}}).value()).isEmpty();
    assertThat(Agreement.fleiss(List.of(new int[] {1, 0})).text(1))
        .isEqualTo("not defined: one assessor");
    assertThat(Agreement.fleiss(List.of()).value()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"0, NO", "9, NO", "10, BARELY", "29, BARELY", "30, YES"})
  void tooFewRunsAreToldAtTenAndThirty(int runs, Enough enough) {
    assertThat(Enough.of(runs)).isEqualTo(enough);
  }

  private static double value(Figure figure) {
    return figure.value().orElseThrow();
  }

  private static List<boolean[]> rows(List<String> texts) {
    List<boolean[]> rows = new ArrayList<>();
    for (String text : texts) {
      boolean[] row = new boolean[text.length()];
      for (int i = 0; i < row.length; i++) {
        row[i] = text.charAt(i) == '1';
      }
      rows.add(row);
    }
    return rows;
  }
}
