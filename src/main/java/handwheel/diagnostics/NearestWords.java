package handwheel.diagnostics;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/** Finds the valid words nearest to a mistyped one by optimal string alignment distance. */
public final class NearestWords {
  private static final int MOST = 3;
  private static final int SHORT = 3;

  private NearestWords() {}

  /**
   * Returns at most three valid words that differ from {@code word} by at most a third of its
   * length (at least two letters, one letter of a word of three or less), nearest first, then in
   * alphabetical order.
   *
   * @param word as typed
   * @param valid the valid words
   * @return nearest words, may be empty
   */
  public static List<String> to(String word, Collection<String> valid) {
    int limit = word.length() <= SHORT ? 1 : Math.max(2, word.length() / 3);
    return valid.stream()
        .filter(v -> distance(word, v) <= limit)
        .sorted(
            Comparator.<String>comparingInt(v -> distance(word, v))
                .thenComparing(Comparator.naturalOrder()))
        .limit(MOST)
        .toList();
  }

  /**
   * Returns a sentence that offers the nearest words, or the valid ones when none is near and they
   * are few.
   *
   * @param word as typed
   * @param valid the valid words
   * @return such as {@code Did you mean `shut`?}; empty when there is nothing to offer
   */
  public static String offer(String word, Collection<String> valid) {
    List<String> near = to(word, valid);
    if (!near.isEmpty()) {
      return "Did you mean " + quoted(near) + "?";
    }
    return valid.isEmpty() || valid.size() > 12
        ? ""
        : "Valid here: " + quoted(valid.stream().sorted().toList()) + ".";
  }

  private static String quoted(List<String> words) {
    return String.join(", ", words.stream().map(w -> "`" + w + "`").toList());
  }

  /** Optimal string alignment: insert, delete, replace, swap of neighbours, each 1. */
  static int distance(String a, String b) {
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        d[i][j] = i == 0 || j == 0 ? i + j : step(d, a, b, i, j);
      }
    }
    return d[a.length()][b.length()];
  }

  private static int step(int[][] d, String a, String b, int i, int j) {
    int cost = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
    int least = Math.min(Math.min(d[i - 1][j] + 1, d[i][j - 1] + 1), d[i - 1][j - 1] + cost);
    boolean swapped =
        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
    return swapped ? Math.min(least, d[i - 2][j - 2] + 1) : least;
  }
}
