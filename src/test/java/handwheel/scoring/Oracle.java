package handwheel.scoring;

import java.util.Arrays;
import java.util.List;
import java.util.Random;

/**
 * Order scoring by trying every set of acts, written without a look at the program's own way: no
 * closure is built and nothing is matched. An act left out by a set is simply passed over; what
 * must come before what is asked by walking the script's edges.
 */
final class Oracle {
  final int acts;
  final boolean[][] isDirectlyBefore;
  final long[] ticks;
  final int[] worth;

  /** A random partial order of acts at random times, many of them the same, of random worth. */
  Oracle(Random random, int acts) {
    this.acts = acts;
    this.isDirectlyBefore = new boolean[acts][acts];
    this.ticks = new long[acts];
    this.worth = new int[acts];
    int density = 1 + random.nextInt(4);
    for (int then = 0; then < acts; then++) {
      ticks[then] = 100 + 40L * random.nextInt(acts);
      worth[then] = 1 + random.nextInt(100 / acts);
      for (int first = 0; first < then; first++) {
        isDirectlyBefore[first][then] = random.nextInt(5) < density;
      }
    }
  }

  /** Makes every act worth the same. */
  void levelWorth() {
    Arrays.fill(worth, 100 / acts);
  }

  private boolean mustPrecede(int first, int then) {
    for (int between = 0; between < acts; between++) {
      if (isDirectlyBefore[first][between] && (between == then || mustPrecede(between, then))) {
        return true;
      }
    }
    return false;
  }

  private boolean isOrderly(int leftOut) {
    for (int first = 0; first < acts; first++) {
      for (int then = 0; then < acts; then++) {
        boolean isKept = (leftOut >> first & 1) == 0 && (leftOut >> then & 1) == 0;
        if (isKept && ticks[then] < ticks[first] && mustPrecede(first, then)) {
          return false;
        }
      }
    }
    return true;
  }

  /** Least number of acts whose removal leaves the rest in order. */
  int leastActs() {
    int least = acts;
    for (int set = 0; set < 1 << acts; set++) {
      if (Integer.bitCount(set) < least && isOrderly(set)) {
        least = Integer.bitCount(set);
      }
    }
    return least;
  }

  /** Least worth of acts whose removal leaves the rest in order. */
  int leastWorth() {
    int least = Integer.MAX_VALUE;
    for (int set = 0; set < 1 << acts; set++) {
      if (worthOf(set) < least && isOrderly(set)) {
        least = worthOf(set);
      }
    }
    return least;
  }

  private int worthOf(int set) {
    int sum = 0;
    for (int act = 0; act < acts; act++) {
      sum += (set >> act & 1) == 1 ? worth[act] : 0;
    }
    return sum;
  }

  /** Whether these acts, left out, leave the rest in order. */
  boolean isOrderlyWithout(List<Integer> leftOut) {
    return isOrderly(leftOut.stream().mapToInt(act -> 1 << act).sum());
  }

  /**
   * Whether these acts are the only smallest set with so many acts done before one that was kept
   * and should have come first.
   */
  boolean isTheEarliestSmallest(List<Integer> leftOut) {
    int ours = leftOut.stream().mapToInt(act -> 1 << act).sum();
    for (int set = 0; set < 1 << acts; set++) {
      boolean isRival = set != ours && Integer.bitCount(set) == leftOut.size() && isOrderly(set);
      if (isRival && earlyIn(set) >= earlyIn(ours)) {
        return false;
      }
    }
    return true;
  }

  private int earlyIn(int set) {
    int early = 0;
    for (int act = 0; act < acts; act++) {
      early += (set >> act & 1) == 1 && isBeforeAKeptOne(act, set) ? 1 : 0;
    }
    return early;
  }

  private boolean isBeforeAKeptOne(int act, int set) {
    for (int kept = 0; kept < acts; kept++) {
      if ((set >> kept & 1) == 0 && ticks[act] < ticks[kept] && mustPrecede(kept, act)) {
        return true;
      }
    }
    return false;
  }

  Script script() {
    Script script = new Script();
    for (int then = 0; then < acts; then++) {
      Script.Building step = Script.shut("s" + then, "f" + then).points(worth[then]);
      for (int first = 0; first < acts; first++) {
        if (isDirectlyBefore[first][then]) {
          step.after("s" + first, "O2");
        }
      }
      script.with(step);
    }
    return script;
  }

  /** The run; some acts are done again later, which changes nothing. */
  Run run(Random random) {
    Run run = new Run().cue(0);
    for (long tick = 0; tick < 1000; tick += 20) {
      for (int act = 0; act < acts; act++) {
        boolean isAgain = tick > ticks[act] && random.nextInt(40) == 0;
        if (ticks[act] == tick || isAgain) {
          run.shut(tick, "f" + act);
        }
      }
    }
    return run.until(2000);
  }
}
