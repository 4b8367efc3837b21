package handwheel.debrief;

import handwheel.logbook.About;
import handwheel.logbook.Chain;
import handwheel.logbook.LedgerBook;
import handwheel.logbook.LedgerLine;
import handwheel.logbook.LedgerRun;
import handwheel.logbook.Problem;
import handwheel.logbook.RunRecord;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;

/**
 * Records held against the ledger of their installation. A record built anew as a whole has a chain
 * that holds and a run that simulates; what it cannot have is the digest that stands here.
 *
 * @param book the ledger of the folder
 */
public record LedgerComparison(LedgerBook book) {
  /**
   * Compares one record.
   *
   * @param file its file name
   * @param record the record as read
   * @return what does not agree; empty if all does
   */
  public List<Trouble> of(String file, RunRecord record) {
    if (record.about().isEmpty()) {
      return List.of();
    }
    About about = record.about().get();
    Optional<LedgerRun> run = run(about.no());
    if (run.isEmpty()) {
      return List.of(trouble(1, "the ledger has no run " + about.no() + "."));
    }
    List<Trouble> troubles = new ArrayList<>();
    if (!run.get().file().equals(file)) {
      troubles.add(
          trouble(
              1,
              "the ledger names the file of run " + about.no() + " `" + run.get().file() + "`."));
    }
    if (!run.get().before().equals(about.before())) {
      troubles.add(trouble(1, "the ledger names another run before it: `before` differs."));
    }
    closing(run.get(), record).ifPresent(troubles::add);
    return troubles;
  }

  private Optional<Trouble> closing(LedgerRun run, RunRecord record) {
    Optional<String> digest = record.digest();
    if (!run.isFinished()) {
      boolean isNamedLate = digest.isPresent() && run.no() < book.lastNo();
      return isNamedLate
          ? Optional.of(trouble(0, "the ledger does not know that the run was finished."))
          : Optional.empty();
    }
    if (digest.isEmpty() || record.end().isEmpty()) {
      return Optional.of(trouble(0, "the ledger says that the run was finished: lines are gone."));
    }
    if (!run.digest().equals(digest.get())) {
      return Optional.of(
          trouble(
              0,
              "the ledger has another digest for the run: an order, its tick or first key, the mode,"
                  + " the seed or another line from `run` to `score` was rebuilt."));
    }
    return record.endH().filter(run.end()::equals).isPresent()
        ? Optional.empty()
        : Optional.of(
            trouble(
                0,
                "the run is the ledger's, its `about` or `end` line is not: trainee, start, who"
                    + " keyed, who attests, key, help given or the way it ended was rebuilt."));
  }

  /**
   * Says what the ledger itself shows.
   *
   * @param files names of the record files that are there
   * @return breaks of its chain, gaps in its numbers, runs without a record
   */
  public List<Trouble> itself(SortedSet<String> files) {
    List<Trouble> troubles = new ArrayList<>();
    for (Problem p : book.problems()) {
      troubles.add(new Trouble(Trouble.Kind.LEDGER, p.line(), p.text()));
    }
    int before = 0;
    for (LedgerRun run : book.runs()) {
      if (run.no() > before + 1) {
        troubles.add(trouble(0, "no run was numbered " + range(before + 1, run.no() - 1) + "."));
      }
      before = run.no();
      if (!files.contains(run.file())) {
        troubles.add(trouble(0, gone(run)));
      }
    }
    return troubles;
  }

  private static String range(int from, int to) {
    return from == to ? String.valueOf(from) : from + " to " + to;
  }

  private String gone(LedgerRun run) {
    String what = run.isFinished() ? "was finished" : "was begun";
    return "run "
        + run.no()
        + " "
        + what
        + ", its record `"
        + run.file()
        + "` is not here."
        + note(run.no())
            .map(n -> " Noted by " + n.by() + ": " + n.why())
            .orElse(" No reason noted.");
  }

  /**
   * Returns the last note about a run.
   *
   * @param no number of the run
   * @return the note, or empty
   */
  public Optional<LedgerLine.Noted> note(int no) {
    return book.notes().stream().filter(n -> n.no() == no).reduce((a, b) -> b);
  }

  private Optional<LedgerRun> run(int no) {
    return book.runs().stream().filter(r -> r.no() == no).findFirst();
  }

  private static Trouble trouble(int line, String text) {
    return new Trouble(Trouble.Kind.LEDGER, line, text);
  }

  /**
   * Says how a run of the ledger came out, for a list of all starts.
   *
   * @param run a run of the book
   * @return {@code finished}, {@code void}, {@code abandoned}, with the reason noted
   */
  public String standing(LedgerRun run) {
    String state = run.digest().equals(Chain.START) ? "begun, not finished" : "finished";
    return note(run.no())
        .map(n -> state + "; " + n.what() + ": " + n.why() + " (" + n.by() + ")")
        .orElse(state);
  }
}
