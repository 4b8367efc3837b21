package handwheel.scoring;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.SortedMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Who is named for a wrong order, and for how much. */
final class LeastBlameTest {
  /**
   * The size is that of D. Koenig's theorem (1931), largest matching = smallest cover, on the order
   * of R. P. Dilworth's (1950), checked against every set of acts.
   */
  @Test
  void namesAsFewActsAsTryingEverySetDoes() {
    Random random = new Random(20_310_203);
    for (int i = 0; i < 2_000; i++) {
      Oracle oracle = new Oracle(random, 2 + random.nextInt(7));
      ScoreSheet sheet = oracle.run(random).score(oracle.script());
      List<Integer> named = named(sheet);
      assertThat(named).as("run %d", i).hasSize(oracle.leastActs());
      assertThat(oracle.isOrderlyWithout(named)).as("run %d", i).isTrue();
    }
  }

  /**
   * No choice is left open: by the decomposition of A. L. Dulmage and N. S. Mendelsohn (1958) one
   * smallest set has more acts done too early than any other.
   */
  @Test
  void namesTheOneSmallestSetWithTheMostEarlyActs() {
    Random random = new Random(1958);
    for (int i = 0; i < 1_000; i++) {
      Oracle oracle = new Oracle(random, 2 + random.nextInt(7));
      ScoreSheet sheet = oracle.run(random).score(oracle.script());
      assertThat(oracle.isTheEarliestSmallest(named(sheet))).as("run %d", i).isTrue();
    }
  }

  /** Doing things at the wrong moment costs what leaving the cheapest wrong ones out would cost. */
  @Test
  void costsAsLittleAsTryingEverySetDoes() {
    Random random = new Random(41);
    for (int i = 0; i < 2_000; i++) {
      Oracle oracle = new Oracle(random, 2 + random.nextInt(7));
      ScoreSheet sheet = oracle.run(random).score(oracle.script());
      assertThat(100 - sheet.points()).as("run %d", i).isEqualTo(oracle.leastWorth());
    }
  }

  /** Where all acts are worth the same, each named act loses all its points and nothing is cut. */
  @Test
  void chargesEqualActsInFull() {
    Random random = new Random(42);
    for (int i = 0; i < 500; i++) {
      Oracle oracle = new Oracle(random, 2 + random.nextInt(7));
      oracle.levelWorth();
      ScoreSheet sheet = oracle.run(random).score(oracle.script());
      assertThat(sheet.charges()).as("run %d", i).allMatch(c -> c.points() == oracle.worth[0]);
    }
  }

  private static List<Integer> named(ScoreSheet sheet) {
    return sheet.charges().stream().map(c -> Integer.valueOf(c.step().substring(1))).toList();
  }

  /**
   * Kendall's example as told in the own fixture table: 3 4 1 2 5 against 1 2 3 4 5 has 4 pairs the
   * wrong way round but 2 displaced acts.
   */
  @ParameterizedTest
  @CsvSource({"3 4 1 2 5, 2", "1 2 3 4 5, 0", "5 4 3 2 1, 4", "2 1 4 3 5, 2", "2 3 4 5 1, 1"})
  void countsDisplacedActsOfATotalOrder(String order, int displaced) {
    assertThat(totalOrder(numbers(order))).isEqualTo(displaced);
  }

  /**
   * For a total order the displaced acts are all but a longest increasing subsequence (C.
   * Schensted, Canadian Journal of Mathematics 13, 1961; value from memory).
   */
  @Test
  void leavesALongestIncreasingSubsequence() {
    Random random = new Random(7);
    for (int i = 0; i < 1_000; i++) {
      List<Integer> order = new ArrayList<>(List.of(1, 2, 3, 4, 5, 6, 7, 8, 9));
      Collections.shuffle(order, random);
      assertThat(totalOrder(order)).as("%s", order).isEqualTo(9 - longestIncreasing(order));
    }
  }

  private static int longestIncreasing(List<Integer> order) {
    List<Integer> tails = new ArrayList<>();
    for (int value : order) {
      int at = 0;
      while (at < tails.size() && tails.get(at) < value) {
        at++;
      }
      if (at == tails.size()) {
        tails.add(value);
      }
      tails.set(at, value);
    }
    return tails.size();
  }

  private static List<Integer> numbers(String order) {
    return List.of(order.split(" ", -1)).stream().map(Integer::valueOf).toList();
  }

  /** Acts done in this order though they should be done by number: how many are named. */
  private static int totalOrder(List<Integer> order) {
    List<Conflict> conflicts = new ArrayList<>();
    for (int i = 0; i < order.size(); i++) {
      for (int j = i + 1; j < order.size(); j++) {
        if (order.get(j) < order.get(i)) {
          conflicts.add(new Conflict(order.get(i) - 1, order.get(j) - 1));
        }
      }
    }
    return LeastBlame.shares(conflicts, worth(order.size(), 10)).size();
  }

  private static int[] worth(int acts, int each) {
    int[] worth = new int[acts];
    Arrays.fill(worth, each);
    return worth;
  }

  @Test
  void blamesTheActDoneTooEarly() {
    assertThat(LeastBlame.shares(List.of(new Conflict(1, 0)), new int[] {10, 10}))
        .containsOnlyKeys(1);
    assertThat(LeastBlame.shares(List.of(new Conflict(0, 1)), new int[] {10, 10}))
        .containsOnlyKeys(0);
  }

  /**
   * One act that was done before two others is one mistake, and so is one done after two others.
   */
  @Test
  void blamesOneActRatherThanTwo() {
    int[] worth = {10, 10, 10};
    assertThat(LeastBlame.shares(List.of(new Conflict(0, 2), new Conflict(1, 2)), worth))
        .containsOnlyKeys(2);
    assertThat(LeastBlame.shares(List.of(new Conflict(2, 0), new Conflict(2, 1)), worth))
        .containsOnlyKeys(2);
  }

  /** The limit: thirty points for one late act would be more than the two early ones are worth. */
  @Test
  void neverChargesMoreThanLeavingOutWouldCost() {
    SortedMap<Integer, Integer> shares =
        LeastBlame.shares(List.of(new Conflict(0, 2), new Conflict(1, 2)), new int[] {5, 6, 30});
    assertThat(shares).containsOnlyKeys(2).containsEntry(2, 11);
  }

  @Test
  void cutsTheLargestShareFirst() {
    List<Conflict> crossed =
        List.of(new Conflict(0, 2), new Conflict(0, 3), new Conflict(1, 2), new Conflict(1, 3));
    SortedMap<Integer, Integer> shares = LeastBlame.shares(crossed, new int[] {20, 12, 9, 9});
    assertThat(shares).containsOnlyKeys(0, 1).containsEntry(0, 9).containsEntry(1, 9);
  }

  @Test
  void cutsOnlyWithinWhatIsEntangled() {
    List<Conflict> twoPairs = List.of(new Conflict(0, 1), new Conflict(2, 3));
    SortedMap<Integer, Integer> shares = LeastBlame.shares(twoPairs, new int[] {20, 4, 12, 12});
    assertThat(shares).containsOnlyKeys(0, 2).containsEntry(0, 4).containsEntry(2, 12);
  }
}
