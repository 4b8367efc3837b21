package handwheel.debrief;

import handwheel.drill.Engine;
import handwheel.drill.Mode;
import handwheel.drill.Rehearsal;
import handwheel.logbook.ChainedEntries;
import handwheel.logbook.ChainedLine;
import handwheel.logbook.Entry;
import handwheel.logbook.Problem;
import handwheel.logbook.RunRecord;
import handwheel.ship.OrderText;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Whether a record holds: its chain, its script and ship, its simulation, its score.
 *
 * @param troubles what does not hold, for people, in the order in which it was found
 */
public record Verification(List<String> troubles) {
  /**
   * Copies the list.
   *
   * @param troubles what does not hold, for people, in the order in which it was found
   */
  public Verification {
    troubles = List.copyOf(troubles);
  }

  /**
   * Returns whether the record holds.
   *
   * @return true if nothing was found
   */
  public boolean holds() {
    return troubles.isEmpty();
  }

  /**
   * Verifies a record.
   *
   * @param record the record as read
   * @param scripts finds ship and script by the ids of the record
   * @return what was found
   */
  public static Verification of(RunRecord record, Scripts scripts) {
    if (!record.holds()) {
      return new Verification(record.problems().stream().map(Problem::text).toList());
    }
    Entry.Run run = (Entry.Run) record.entries().get(0);
    Optional<Scripts.Found> found = scripts.find(run.ship(), run.script());
    List<String> troubles = new ArrayList<>(sources(run, found));
    if (troubles.isEmpty()) {
      simulate(record, run, found.orElseThrow()).ifPresent(troubles::add);
    }
    return new Verification(troubles);
  }

  private static List<String> sources(Entry.Run run, Optional<Scripts.Found> found) {
    List<String> troubles = new ArrayList<>();
    if (!run.engine().equals(Engine.VERSION)) {
      troubles.add(
          "made by version "
              + run.engine()
              + " of the program, this is "
              + Engine.VERSION
              + ": only the same version simulates the same; this is no sign of tampering.");
    }
    if (Mode.ofWord(run.mode()).isEmpty()) {
      troubles.add("line 2: mode `" + run.mode() + "` is none that this program has.");
    }
    if (found.isEmpty()) {
      troubles.add("script `" + run.script() + "` on ship `" + run.ship() + "` is not here.");
      return troubles;
    }
    if (!found.get().ship().sha256().equals(run.shipSha())) {
      troubles.add("the files of ship `" + run.ship() + "` are not those of the run.");
    }
    if (!found.get().casualty().sha256().equals(run.scriptSha())) {
      troubles.add("script `" + run.script() + "` is not the one of the run.");
    }
    return troubles;
  }

  private static Optional<String> simulate(RunRecord record, Entry.Run run, Scripts.Found found) {
    Mode mode = Mode.ofWord(run.mode()).orElseThrow();
    OrderText orders = new OrderText(found.ship(), found.casualty().messages());
    List<String> again = new ArrayList<>();
    ChainedEntries chained = new ChainedEntries(again::add);
    Scored.play(
        new Rehearsal.Setup(found.ship(), found.casualty(), run.seed(), mode),
        new RecordedInputs(record.entries(), orders),
        chained,
        session -> {});
    return firstDifference(record.lines(), again);
  }

  private static Optional<String> firstDifference(List<ChainedLine> was, List<String> again) {
    for (int i = 0; i < was.size(); i++) {
      String is = i < again.size() ? again.get(i) : "nothing";
      if (!was.get(i).text().equals(is)) {
        return Optional.of(difference(was.get(i), is));
      }
    }
    return was.size() == again.size()
        ? Optional.empty()
        : Optional.of("the run goes on in the simulation where the record ends.");
  }

  private static String difference(ChainedLine was, String is) {
    String verb = was.entry() instanceof Entry.Score ? "scores" : "simulates";
    String where = "line " + was.number() + " (`" + was.entry().kind() + "`";
    String when = was.entry().t() > 0 ? ", tick " + was.entry().t() + ") " : ") ";
    return where
        + when
        + verb
        + " differently, first "
        + FieldDifference.text(was.text(), is)
        + ".";
  }
}
