package handwheel.board;

import handwheel.logbook.Minute;
import handwheel.scoring.ScoreSheet;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/**
 * Who looks at papers, and what papers need from outside the index.
 *
 * @param id pseudonym of who looks; empty: nobody in particular
 * @param minutes all minutes
 * @param name name behind a pseudonym; the pseudonym where the name was erased
 * @param sheet score sheet of a run, scored again from its record; empty where its script is not
 *     here
 */
public record Viewer(
    String id,
    List<Minute> minutes,
    UnaryOperator<String> name,
    Function<RunRow, Optional<ScoreSheet>> sheet) {
  /**
   * Returns whether the machine's score of a run may be shown.
   *
   * @param run the run
   * @return false for a scored run that he has not marked
   */
  public boolean maySee(RunRow run) {
    return Marks.mayShow(minutes, run, id);
  }

  /**
   * Prints a run's result.
   *
   * @param run the run
   * @return verdict and points, or that the run waits for the assessor's mark
   */
  public String result(RunRow run) {
    if (!run.standing().equals("finished")) {
      return run.standing();
    }
    return maySee(run) ? run.score().verdict() + " " + run.score().points() : "mark first";
  }
}
