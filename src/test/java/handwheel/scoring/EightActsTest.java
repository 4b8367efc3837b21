package handwheel.scoring;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Properties 1 and 2 of a fair scorer on the own fixture of eight acts, exhaustively. */
final class EightActsTest {
  /** Figures of the own fixture: 448 permitted orders score 100, the other 39,872 score less. */
  @Test
  void everyPermittedOrderAndNoOtherScoresAHundred() {
    List<List<Integer>> orders = EightActs.permutations();
    List<List<Integer>> full =
        orders.stream().filter(o -> EightActs.score(o).points() == 100).toList();
    assertThat(orders).hasSize(40_320);
    assertThat(full).hasSize(448).allMatch(EightActs::isLegal);
  }

  /**
   * Figures of the own fixture: how many acts are displaced. Violated pairs would charge a late
   * trip five times.
   */
  @ParameterizedTest
  @CsvSource({
    "0 1 2 3 5 6 4 7, 0",
    "1 0 3 2 7 4 6 5, 0",
    "0 2 1 3 4 5 6 7, 1",
    "0 2 3 4 5 6 7 1, 1",
    "0 1 2 4 5 6 7 3, 1",
    "0 1 2 4 5 6 7, 0",
    "7 6 5 4 3 2 1 0, 4",
  })
  void chargesTheDisplacedActsOnce(String order, int displaced) {
    List<Charge> charges = ofOrder(EightActs.score(acts(order)));
    assertThat(charges).hasSize(displaced);
  }

  @Test
  void namesTheOneActThatCameLast() {
    ScoreSheet sheet = EightActs.score(acts("0 2 3 4 5 6 7 1"));
    Charge charge = ofOrder(sheet).get(0);
    assertThat(charge.step()).isEqualTo("trip");
    assertThat(charge.type()).isEqualTo(ErrorClass.OUT_OF_ORDER);
    assertThat(charge.why()).contains("quick-closing-valve").contains("main-stop").contains("O2");
    assertThat(sheet.points()).isEqualTo(85);
  }

  /** Property 2: two neighbours that need no order may change places, in every permitted order. */
  @Test
  void freePairsSwapAtNoCost() {
    int swaps = 0;
    for (List<Integer> order : EightActs.permutations()) {
      if (EightActs.isLegal(order)) {
        swaps += swapsAtNoCost(order);
      }
    }
    assertThat(swaps).isGreaterThan(448);
  }

  private static int swapsAtNoCost(List<Integer> order) {
    int swaps = 0;
    for (int i = 0; i + 1 < order.size(); i++) {
      List<Integer> swapped = new ArrayList<>(order);
      Collections.swap(swapped, i, i + 1);
      if (EightActs.isLegal(swapped)) {
        assertThat(EightActs.score(swapped).points()).as("%s", swapped).isEqualTo(100);
        swaps++;
      }
    }
    return swaps;
  }

  /**
   * Own fixture: never doing a thing must not rank above doing it late, as violated pairs would.
   */
  @Test
  void leavingOutNeverBeatsDoingItLast() {
    for (int act : EightActs.IN_ORDER) {
      List<Integer> without = new ArrayList<>(EightActs.IN_ORDER);
      without.remove(Integer.valueOf(act));
      List<Integer> last = new ArrayList<>(without);
      last.add(act);
      assertThat(EightActs.score(last).points())
          .as("act %s last", act)
          .isGreaterThanOrEqualTo(EightActs.score(without).points());
    }
  }

  private static List<Charge> ofOrder(ScoreSheet sheet) {
    return sheet.charges().stream()
        .filter(c -> c.type() == ErrorClass.EARLY || c.type() == ErrorClass.OUT_OF_ORDER)
        .toList();
  }

  private static List<Integer> acts(String order) {
    return List.of(order.split(" ", -1)).stream().map(Integer::valueOf).toList();
  }
}
