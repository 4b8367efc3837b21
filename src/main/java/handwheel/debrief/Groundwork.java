package handwheel.debrief;

import handwheel.casualty.Casualty;
import handwheel.drill.Mode;
import handwheel.drill.Player;
import handwheel.drill.Rehearsal;
import handwheel.logbook.Entry;
import handwheel.logbook.RunRecord;
import handwheel.ship.OrderText;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * What a debrief stands on: whether the record holds, its run simulated once for that and for its
 * figures, and the same drill played right.
 */
public final class Groundwork {
  private static final Verification HOLDS = new Verification(List.of());

  private final Verification verification;
  private final Optional<Played> run;
  private final Optional<Played> witness;

  private Groundwork(Verification verification, Optional<Played> run, Optional<Played> witness) {
    this.verification = verification;
    this.run = run;
    this.witness = witness;
  }

  /**
   * Lays it for a record.
   *
   * @param record the record as read
   * @param scripts finds ship and script by the ids of the record
   * @param witness plays the script found right
   * @param tasks does the two simulations
   * @return the groundwork; without simulations as far as the record or its script is missing
   */
  public static Groundwork of(
      RunRecord record, Scripts scripts, Function<Scripts.Found, Player> witness, Tasks tasks) {
    Supplier<Groundwork> held = () -> held(record, scripts);
    Supplier<Groundwork> right =
        () -> new Groundwork(HOLDS, Optional.empty(), right(record, scripts, witness));
    List<Groundwork> both = tasks.all(List.of(held, right));
    return new Groundwork(both.get(0).verification, both.get(0).run, both.get(1).witness);
  }

  private static Groundwork held(RunRecord record, Scripts scripts) {
    Meter meter = new Meter();
    Verification.Checked checked = Verification.checked(record, scripts, meter);
    Optional<Played> run =
        checked
            .again()
            .filter(a -> checked.verification().holds())
            .map(a -> new Played(a.entries(), a.sheet(), meter.outcome(a.sheet())));
    return new Groundwork(checked.verification(), run, Optional.empty());
  }

  private static Optional<Played> right(
      RunRecord record, Scripts scripts, Function<Scripts.Found, Player> witness) {
    if (record.entries().isEmpty()) {
      return Optional.empty();
    }
    Entry.Run head = (Entry.Run) record.entries().get(0);
    return scripts.find(head).map(f -> Played.play(setup(f, head), witness.apply(f)));
  }

  /** Lays it for entries that are taken to hold unless there are troubles. */
  static Groundwork of(Debrief.Request request, Player witness) {
    Entry.Run head = (Entry.Run) request.entries().get(0);
    Rehearsal.Setup setup = setup(request.found(), head);
    Casualty casualty = setup.casualty();
    OrderText reader = new OrderText(setup.ship(), casualty.messages());
    Optional<Played> run =
        request.troubles().isEmpty()
            ? Optional.of(Played.play(setup, new RecordedInputs(request.entries(), reader)))
            : Optional.empty();
    return new Groundwork(HOLDS, run, Optional.of(Played.play(setup, witness)));
  }

  static Rehearsal.Setup setup(Scripts.Found found, Entry.Run head) {
    Mode mode = Mode.ofWord(head.mode()).orElse(Mode.PRACTICE);
    return new Rehearsal.Setup(found.ship(), found.casualty(), head.seed(), mode).unkept();
  }

  /**
   * Returns whether the record holds.
   *
   * @return what was found
   */
  public Verification verification() {
    return verification;
  }

  /** The run simulated; empty where the record does not hold. */
  Optional<Played> run() {
    return run;
  }

  /** The same drill played right. */
  Played witness() {
    return witness.orElseThrow();
  }
}
