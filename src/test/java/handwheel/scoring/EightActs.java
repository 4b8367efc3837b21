package handwheel.scoring;

import handwheel.casualty.Casualty;
import java.util.ArrayList;
import java.util.List;

/**
 * Own fixture: eight acts, 0 alarm, 1 trip, 2 quick-closing valve, 3 main stop, 4 vent, 5 report, 6
 * fan, 7 verify, with 0 before 5, 1 before 2 and 3, 2 before 6 and 7, 3 before 4 and 7. Its closure
 * has 10 pairs and 448 of the 40,320 orders keep it (counted by exhaustion, twice, by different
 * programs).
 */
final class EightActs {
  static final List<Integer> IN_ORDER = List.of(0, 1, 2, 3, 4, 5, 6, 7);

  /** First act and then act of every pair of the closure, written out by hand. */
  static final int[][] CLOSURE = {
    {0, 5}, {1, 2}, {1, 3}, {2, 6}, {3, 4}, {3, 7}, {2, 7}, {1, 6}, {1, 4}, {1, 7}
  };

  static final Casualty CASUALTY =
      new Script()
          .with(Script.ordered("alarm", "everyone leave").points(15))
          .with(Script.shut("trip", "trip").points(15))
          .with(Script.shut("quick-closing-valve", "quick-valve").points(13).after("trip", "O5"))
          .with(Script.shut("main-stop", "main-stop").points(15).after("trip", "O2"))
          .with(Script.open("vent", "vent").points(10).after("main-stop", "O23"))
          .with(Script.reported("report", "what-is-wrong").points(10).after("alarm", "O12"))
          .with(Script.shut("fan", "fan").points(10).after("quick-closing-valve", "O13"))
          .with(
              Script.proved("verify")
                  .points(12)
                  .after("main-stop", "O28")
                  .after("quick-closing-valve", "O2"))
          .casualty();

  private EightActs() {}

  /** A run that does these acts, 4 s apart. */
  static Run run(List<Integer> order) {
    Run run = new Run().cue(0);
    for (int i = 0; i < order.size(); i++) {
      act(run, order.get(i), 100 + 80L * i);
    }
    return run.until(2000);
  }

  private static void act(Run run, int act, long tick) {
    switch (act) {
      case 0 -> run.say(tick, "everyone leave");
      case 1 -> run.shut(tick, "trip");
      case 2 -> run.shut(tick, "quick-valve");
      case 3 -> run.shut(tick, "main-stop");
      case 4 -> run.open(tick, "vent");
      case 5 -> run.report(tick, "what-is-wrong");
      case 6 -> run.shut(tick, "fan");
      case 7 -> run.read(tick, 2_000);
      default -> throw new IllegalArgumentException("no act " + act);
    }
  }

  static ScoreSheet score(List<Integer> order) {
    return run(order).score(CASUALTY);
  }

  /** Whether no pair is the wrong way round; knows nothing of the program's own closure. */
  static boolean isLegal(List<Integer> order) {
    for (int[] pair : CLOSURE) {
      if (order.indexOf(pair[0]) > order.indexOf(pair[1])) {
        return false;
      }
    }
    return true;
  }

  /** Every order of the acts. */
  static List<List<Integer>> permutations() {
    List<List<Integer>> all = List.of(List.of());
    for (int act : IN_ORDER) {
      List<List<Integer>> longer = new ArrayList<>();
      for (List<Integer> order : all) {
        for (int at = 0; at <= order.size(); at++) {
          List<Integer> next = new ArrayList<>(order);
          next.add(at, act);
          longer.add(next);
        }
      }
      all = longer;
    }
    return all;
  }
}
