package handwheel.scoring;

import java.util.List;

/**
 * A largest flow through the two-sided graph of the conflicts: each act stands once on the left,
 * for having been early, and once on the right, for having been late, and can carry so many units
 * on each side. With one unit an act this is a largest matching.
 *
 * <p>Found by augmenting paths: L. R. Ford and D. R. Fulkerson, Maximal flow through a network,
 * Canadian Journal of Mathematics 8, 1956 (value from memory). Units are points, so at most 100
 * paths are looked for.
 */
final class TwoSidedFlow {
  private final int[] capacity;
  private final boolean[][] isEdge;
  private final int[][] flow;
  private final int[] leftUsed;
  private final int[] rightUsed;
  private int value;

  TwoSidedFlow(List<Conflict> conflicts, int[] capacity) {
    int n = capacity.length;
    this.capacity = capacity.clone();
    this.isEdge = new boolean[n][n];
    this.flow = new int[n][n];
    this.leftUsed = new int[n];
    this.rightUsed = new int[n];
    conflicts.forEach(c -> isEdge[c.early()][c.late()] = true);
    for (int a = 0; a < n; a++) {
      while (leftUsed[a] < capacity[a] && pushFrom(a, new boolean[n])) {
        leftUsed[a]++;
        value++;
      }
    }
  }

  int value() {
    return value;
  }

  private boolean pushFrom(int left, boolean[] isSeen) {
    for (int right = 0; right < capacity.length; right++) {
      if (isEdge[left][right] && !isSeen[right]) {
        isSeen[right] = true;
        if (hasRoom(right) || isRerouted(right, isSeen)) {
          flow[left][right]++;
          return true;
        }
      }
    }
    return false;
  }

  private boolean hasRoom(int right) {
    if (rightUsed[right] == capacity[right]) {
      return false;
    }
    rightUsed[right]++;
    return true;
  }

  /** Frees a unit of the right side by sending another act's unit elsewhere. */
  private boolean isRerouted(int right, boolean[] isSeen) {
    for (int other = 0; other < capacity.length; other++) {
      if (flow[other][right] > 0 && pushFrom(other, isSeen)) {
        flow[other][right]--;
        return true;
      }
    }
    return false;
  }

  /**
   * Which acts are in the smallest cover, by the construction in the proof of D. Koenig's theorem
   * (Graphok es matrixok, Matematikai es Fizikai Lapok 38, 1931; value from memory): left acts that
   * no alternating path from an unused left act reaches, and right acts that one does. The set does
   * not depend on which largest matching was found (A. L. Dulmage and N. S. Mendelsohn, Coverings
   * of bipartite graphs, Canadian Journal of Mathematics 10, 1958; value from memory), and of all
   * smallest covers it has the most left acts: those done too early.
   */
  boolean[] cover() {
    int n = capacity.length;
    boolean[] isLeftReached = new boolean[n];
    boolean[] isRightReached = new boolean[n];
    for (int a = 0; a < n; a++) {
      if (leftUsed[a] < capacity[a]) {
        reach(a, isLeftReached, isRightReached);
      }
    }
    boolean[] isCovered = new boolean[n];
    for (int a = 0; a < n; a++) {
      isCovered[a] = isRightReached[a] || (capacity[a] > 0 && !isLeftReached[a]);
    }
    return isCovered;
  }

  private void reach(int left, boolean[] isLeftReached, boolean[] isRightReached) {
    if (isLeftReached[left]) {
      return;
    }
    isLeftReached[left] = true;
    for (int right = 0; right < capacity.length; right++) {
      if (isEdge[left][right] && !isRightReached[right]) {
        isRightReached[right] = true;
        reachBack(right, isLeftReached, isRightReached);
      }
    }
  }

  private void reachBack(int right, boolean[] isLeftReached, boolean[] isRightReached) {
    for (int other = 0; other < capacity.length; other++) {
      if (flow[other][right] > 0) {
        reach(other, isLeftReached, isRightReached);
      }
    }
  }
}
