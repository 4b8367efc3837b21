package handwheel.logbook;

import java.util.ArrayList;
import java.util.List;

/** Gathers problems, and keeps only so many of a file that is nothing but problems. */
final class ProblemList {
  static final int LIMIT = 50;

  private final List<Problem> kept = new ArrayList<>();
  private int count;

  void add(int line, Problem.Kind kind, String message) {
    add(new Problem(line, 0, kind, message));
  }

  void add(int line, LineTrouble trouble) {
    add(new Problem(line, trouble.column(), Problem.Kind.NOT_UNDERSTOOD, trouble.message()));
  }

  private void add(Problem problem) {
    count++;
    if (count <= LIMIT) {
      kept.add(problem);
    }
  }

  /** Returns how many there were, kept or not. */
  int count() {
    return count;
  }

  List<Problem> kept() {
    return List.copyOf(kept);
  }
}
