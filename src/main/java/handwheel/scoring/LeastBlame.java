package handwheel.scoring;

import java.util.Arrays;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Whose fault a wrong order is, and what it costs.
 *
 * <p><b>Who:</b> the smallest set of acts whose removal leaves the rest in a permitted order. The
 * conflicts are a partial order of the acts, so by R. P. Dilworth's theorem (A decomposition
 * theorem for partially ordered sets, Annals of Mathematics 51, 1950; value from memory) the
 * smallest set is as large as a largest matching of the two-sided graph, and Koenig's construction
 * names it. Where several sets are smallest, the one with the most acts done too early is taken; no
 * further choice is left (see {@link TwoSidedFlow#cover()}).
 *
 * <p><b>How much:</b> what each named act has left to lose, but together never more than the
 * cheapest set of acts that would have to be left out to make the rest right. So doing a thing at
 * the wrong moment never costs more than not doing it. Where that limit bites, the largest charges
 * of the acts that are entangled are cut first.
 */
final class LeastBlame {
  private LeastBlame() {}

  /** The least points whose acts, left out, would leave the rest in order. */
  static int price(List<Conflict> conflicts, int[] left) {
    return new TwoSidedFlow(conflicts, left).value();
  }

  /**
   * Names the acts and what each is charged.
   *
   * @param conflicts every pair done the wrong way round
   * @param left what each step has left to lose
   * @return index of each named step and its points, possibly 0
   */
  static SortedMap<Integer, Integer> shares(List<Conflict> conflicts, int[] left) {
    int[] ones = new int[left.length];
    Arrays.fill(ones, 1);
    boolean[] isNamed = new TwoSidedFlow(conflicts, ones).cover();
    SortedMap<Integer, Integer> shares = new TreeMap<>();
    for (int i = 0; i < left.length; i++) {
      if (isNamed[i]) {
        shares.put(i, left[i]);
      }
    }
    Conflict.groups(conflicts).forEach(group -> cut(shares, group, price(group, left)));
    return shares;
  }

  /** Cuts the shares of those in a group of conflicts to its price. */
  private static void cut(SortedMap<Integer, Integer> shares, List<Conflict> group, int price) {
    SortedMap<Integer, Integer> own = new TreeMap<>(shares);
    own.keySet().removeIf(step -> group.stream().noneMatch(c -> c.concerns(step)));
    int sum = own.values().stream().mapToInt(Integer::intValue).sum();
    for (; sum > price; sum--) {
      own.merge(largest(own), -1, Integer::sum);
    }
    shares.putAll(own);
  }

  /** The largest share; of equal ones the last in the script. */
  private static int largest(SortedMap<Integer, Integer> shares) {
    return shares.entrySet().stream()
        .reduce((a, b) -> b.getValue() >= a.getValue() ? b : a)
        .orElseThrow()
        .getKey();
  }
}
