package handwheel.board;

import java.util.ArrayList;
import java.util.List;

/**
 * Which runs of the index are wanted. An empty text means all.
 *
 * @param trainee pseudonym
 * @param script id of the drill
 * @param from first day, {@code 2031-02-03}
 * @param to last day
 * @param verdict {@code pass} or {@code fail}
 * @param atMost how many rows at most
 */
public record RunFilter(
    String trainee, String script, String from, String to, String verdict, int atMost) {
  /** Everything. */
  public static final RunFilter ALL = new RunFilter("", "", "", "", "", Integer.MAX_VALUE);

  /**
   * Returns the runs of one candidate.
   *
   * @param trainee pseudonym
   * @return a filter
   */
  public static RunFilter ofTrainee(String trainee) {
    return new RunFilter(trainee, "", "", "", "", Integer.MAX_VALUE);
  }

  String where() {
    List<String> parts = new ArrayList<>(List.of("1 = 1"));
    add(parts, trainee, "trainee = ?");
    add(parts, script, "script = ?");
    add(parts, from, "started >= ?");
    add(parts, to, "started < ?");
    add(parts, verdict, "verdict = ?");
    return String.join(" and ", parts);
  }

  private static void add(List<String> parts, String value, String condition) {
    if (!value.isEmpty()) {
      parts.add(condition);
    }
  }

  List<String> values() {
    String behind = to.isEmpty() ? "" : to + "~";
    return List.of(trainee, script, from, behind, verdict).stream()
        .filter(v -> !v.isEmpty())
        .toList();
  }
}
