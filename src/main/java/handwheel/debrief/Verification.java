package handwheel.debrief;

import handwheel.drill.Engine;
import handwheel.drill.Mode;
import handwheel.drill.Rehearsal;
import handwheel.drill.Session;
import handwheel.logbook.ChainedEntries;
import handwheel.logbook.ChainedLine;
import handwheel.logbook.Entry;
import handwheel.logbook.LineDifference;
import handwheel.logbook.Problem;
import handwheel.logbook.RunRecord;
import handwheel.ship.OrderText;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Whether a record holds: its chain, its signature, its script and ship, its simulation, its score.
 *
 * @param found what does not hold, in the order in which it was found
 */
public record Verification(List<Trouble> found) {
  /**
   * Copies the list.
   *
   * @param found what does not hold, in the order in which it was found
   */
  public Verification {
    found = List.copyOf(found);
  }

  /**
   * Returns whether the record holds.
   *
   * @return true if nothing was found
   */
  public boolean holds() {
    return found.isEmpty();
  }

  /**
   * Returns whether nothing was found but that another version of the program made the record: its
   * bytes are those that were written, and only that version can simulate it.
   *
   * @return true if that is all
   */
  public boolean isOnlyOfOtherEngine() {
    return !holds() && found.stream().allMatch(t -> t.kind() == Trouble.Kind.ENGINE);
  }

  /**
   * Returns what does not hold, in words.
   *
   * @return sentences for people, in the order in which they were found
   */
  public List<String> troubles() {
    return found.stream().map(Trouble::text).toList();
  }

  /**
   * Verifies a record.
   *
   * @param record the record as read
   * @param scripts finds ship and script by the ids of the record
   * @return what was found
   */
  public static Verification of(RunRecord record, Scripts scripts) {
    return checked(record, scripts, session -> {}).verification();
  }

  /** What was found, and the run simulated again if it came to that. */
  record Checked(Verification verification, Optional<Scored> again) {}

  /** Verifies a record; whoever wants to measure the simulation is called after every tick. */
  static Checked checked(RunRecord record, Scripts scripts, Consumer<Session> afterTick) {
    if (!record.holds()) {
      return unsimulated(record.problems().stream().map(Verification::chain).toList());
    }
    Entry.Run run = (Entry.Run) record.entries().get(0);
    if (!run.engine().equals(Engine.VERSION)) {
      return unsimulated(List.of(otherEngine(run)));
    }
    Optional<Scripts.Found> found = scripts.find(run);
    List<Trouble> troubles = sources(run, found);
    return troubles.isEmpty()
        ? simulate(record, run, found.orElseThrow(), afterTick)
        : unsimulated(troubles);
  }

  private static Checked unsimulated(List<Trouble> troubles) {
    return new Checked(new Verification(troubles), Optional.empty());
  }

  private static Trouble chain(Problem problem) {
    Trouble.Kind kind =
        switch (problem.kind()) {
          case TORN, UNFINISHED -> Trouble.Kind.UNFINISHED;
          case SIGNATURE_MISSING, SIGNATURE_WRONG -> Trouble.Kind.SIGNATURE;
          case UNREADABLE,
              ABOUT_MISSING,
              ABOUT_CHANGED,
              ABOUT_NOT_OF_END,
              NOT_UNDERSTOOD,
              CHAIN_BROKEN,
              RUN_OUT_OF_PLACE,
              AFTER_SCORE,
              AFTER_END,
              SECOND_END,
              END_WITHOUT_SCORE,
              LEDGER_DISAGREES ->
              Trouble.Kind.CHAIN;
        };
    return new Trouble(kind, problem.line(), problem.text());
  }

  private static Trouble otherEngine(Entry.Run run) {
    return new Trouble(
        Trouble.Kind.ENGINE,
        2,
        "made by version "
            + run.engine()
            + " of the program, this is "
            + Engine.VERSION
            + ": its chain holds, and only that version can simulate it. No sign of tampering.");
  }

  private static List<Trouble> sources(Entry.Run run, Optional<Scripts.Found> found) {
    List<Trouble> troubles = new ArrayList<>();
    if (Mode.ofWord(run.mode()).isEmpty()) {
      String text = "line 2: mode `" + run.mode() + "` is none that this program has.";
      troubles.add(new Trouble(Trouble.Kind.SIMULATION, 2, text));
    }
    if (found.isEmpty()) {
      String text = "script `" + run.script() + "` on ship `" + run.ship() + "` is not here.";
      troubles.add(new Trouble(Trouble.Kind.SCRIPT, 2, text));
      return troubles;
    }
    if (!found.get().ship().sha256().equals(run.shipSha())) {
      String text = "the files of ship `" + run.ship() + "` are not those of the run.";
      troubles.add(new Trouble(Trouble.Kind.SHIP, 2, text));
    }
    if (!found.get().casualty().sha256().equals(run.scriptSha())) {
      String text = "script `" + run.script() + "` is not the one of the run.";
      troubles.add(new Trouble(Trouble.Kind.SCRIPT, 2, text));
    }
    return troubles;
  }

  private static Checked simulate(
      RunRecord record, Entry.Run run, Scripts.Found found, Consumer<Session> afterTick) {
    Mode mode = Mode.ofWord(run.mode()).orElseThrow();
    OrderText orders = new OrderText(found.ship(), found.casualty().messages());
    List<String> again = new ArrayList<>();
    ChainedEntries chained = new ChainedEntries(again::add);
    Scored scored =
        Scored.play(
            new Rehearsal.Setup(found.ship(), found.casualty(), run.seed(), mode),
            new RecordedInputs(record.entries(), orders),
            chained,
            afterTick);
    List<Trouble> troubles = firstDifference(record.lines(), again).stream().toList();
    return new Checked(new Verification(troubles), Optional.of(scored));
  }

  private static Optional<Trouble> firstDifference(List<ChainedLine> was, List<String> again) {
    for (int i = 0; i < was.size(); i++) {
      String is = i < again.size() ? again.get(i) : "nothing";
      if (!was.get(i).text().equals(is)) {
        return Optional.of(difference(was.get(i), is));
      }
    }
    return was.size() == again.size()
        ? Optional.empty()
        : Optional.of(
            new Trouble(
                Trouble.Kind.SIMULATION,
                0,
                "the run goes on in the simulation where the record ends."));
  }

  private static Trouble difference(ChainedLine was, String is) {
    boolean isScore = was.entry() instanceof Entry.Score;
    String text =
        "line "
            + was.number()
            + " (`"
            + was.entry().kind()
            + "` at tick "
            + was.entry().t()
            + ") "
            + (isScore ? "scores" : "simulates")
            + " differently: "
            + LineDifference.of(was.text(), is).map(Verification::words).orElse("another line.");
    Trouble.Kind kind = isScore ? Trouble.Kind.SCORE : Trouble.Kind.SIMULATION;
    return new Trouble(kind, was.number(), text);
  }

  private static String words(LineDifference d) {
    return "`"
        + d.field()
        + "` is "
        + d.was()
        + " in the record and "
        + d.is()
        + " in the simulation.";
  }
}
