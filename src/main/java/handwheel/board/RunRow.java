package handwheel.board;

import handwheel.logbook.About;
import handwheel.logbook.Chain;
import handwheel.logbook.Entry;
import handwheel.logbook.RunRecord;
import java.util.List;
import java.util.Optional;

/**
 * One run in the board's list, as its record says; made from the file alone, not verified.
 *
 * @param path where the record stands
 * @param about who, when, which run
 * @param run what fixed it
 * @param score points, verdict and charges; empty verdict where there is none
 * @param root the {@code h} of the end line, by which copies are known; 64 zeros if it has none
 * @param standing {@code finished}, {@code unfinished} or {@code damaged}
 * @param coached help noted
 * @param isSigned whether a right signature stands in it
 */
public record RunRow(
    String path,
    About about,
    Entry.Run run,
    Entry.Score score,
    String root,
    String standing,
    String coached,
    boolean isSigned) {
  /** What a record without score has. */
  public static final Entry.Score NO_SCORE = new Entry.Score(0, "", List.of());

  /**
   * Makes a row.
   *
   * @param path where the record stands
   * @param record the record as read
   * @return the row; empty if not even about and run can be read
   */
  public static Optional<RunRow> of(String path, RunRecord record) {
    List<Entry> entries = record.entries();
    if (entries.isEmpty() || record.about().isEmpty()) {
      return Optional.empty();
    }
    Entry last = entries.get(entries.size() - 1);
    return Optional.of(
        new RunRow(
            path,
            record.about().get(),
            (Entry.Run) entries.get(0),
            last instanceof Entry.Score s ? s : NO_SCORE,
            record.endH().orElse(Chain.START),
            standing(record),
            record.end().map(e -> e.coached()).orElse(""),
            record.signed().isPresent()));
  }

  RunRow withLost(List<Entry.Loss> lost) {
    Entry.Score whole = new Entry.Score(score.points(), score.verdict(), lost);
    return new RunRow(path, about, run, whole, root, standing, coached, isSigned);
  }

  private static String standing(RunRecord record) {
    if (record.holds()) {
      return "finished";
    }
    return record.isOnlyUnfinished() ? "unfinished" : "damaged";
  }

  /**
   * Returns whether the run may count for a qualification: finished, scored under seal, keyed as
   * the record says and attested by somebody else than the trainee. A self-run never counts.
   *
   * @return false for practice, self-runs, unsigned, unfinished and damaged ones
   */
  public boolean mayCount() {
    return whyNot().isEmpty();
  }

  /**
   * Says why a run cannot count for a qualification.
   *
   * @return a few words; empty if it can
   */
  public String whyNot() {
    if (!standing.equals("finished")) {
      return standing;
    }
    if (!run.isScored()) {
      return run.mode();
    }
    if (about.attests().isEmpty() || about.attests().equals(about.trainee())) {
      return "self-run";
    }
    if (!isSigned) {
      return "unsigned";
    }
    return "";
  }

  /**
   * Returns what must be the same for two runs to be pooled in one figure.
   *
   * @return engine, ship and script with their hashes
   */
  public String version() {
    return run.engine() + "/" + run.shipSha() + "/" + run.scriptSha();
  }
}
