package handwheel.debrief;

import handwheel.drill.Rehearsal;
import handwheel.scoring.Charge;
import handwheel.scoring.ErrorClass;
import handwheel.ship.OrderText;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * What each mistake cost. The drill is simulated again with that one act mended, and with all of
 * them. The crew is taken to act alike: same paces, same ears, same laws of the hand.
 */
final class Costs {
  private static final int ROUNDS = 4;

  private final Rehearsal.Setup setup;
  private final OrderText reader;
  private final Played run;
  private final Mending mending;

  /**
   * Makes it.
   *
   * @param setup what the run was made from
   * @param run the run as it was
   * @param witness the same drill played right
   */
  Costs(Rehearsal.Setup setup, Played run, Played witness) {
    this.setup = setup;
    this.run = run;
    this.reader = new OrderText(setup.ship(), setup.casualty().messages());
    this.mending = new Mending(setup.casualty(), reader, witness);
  }

  /** Simulates the run with each mistake mended, in the order of the sheet, and with all. */
  Debrief.Simulated simulated(Tasks tasks) {
    List<TimedInput> inputs = RecordedInputs.of(run.entries(), reader);
    List<Supplier<Costed>> todo = new ArrayList<>();
    todo.add(() -> new Costed(Optional.empty(), all()));
    run.sheet().charges().stream()
        .filter(c -> c.points() > 0)
        .forEach(c -> todo.add(() -> new Costed(cost(c, inputs), run.outcome())));
    List<Costed> done = tasks.all(todo);
    List<Cost> costs = done.stream().flatMap(d -> d.cost().stream()).toList();
    return new Debrief.Simulated(run.outcome(), costs, done.get(0).outcome());
  }

  /** What came of a task: the cost of a mistake, or the run with all of them mended. */
  private record Costed(Optional<Cost> cost, Outcome outcome) {}

  private Optional<Cost> cost(Charge charge, List<TimedInput> inputs) {
    Optional<Cost> last = Optional.empty();
    for (Edit way : mending.ways(charge, run)) {
      Played mended = play(way.on(inputs));
      boolean isEnough = mended.sheet().charges().stream().noneMatch(c -> isSame(c, charge));
      last = Optional.of(new Cost(charge, mended.outcome(), isEnough, spared(mended)));
      if (isEnough) {
        return last;
      }
    }
    return last;
  }

  /** What came of the run and does not come of the mended one. */
  private List<String> spared(Played mended) {
    List<String> left = harms(mended);
    return harms(run).stream().filter(h -> !left.contains(h)).toList();
  }

  private static List<String> harms(Played played) {
    return played.sheet().charges().stream()
        .filter(c -> c.type() == ErrorClass.HARM)
        .map(Charge::step)
        .toList();
  }

  private static boolean isSame(Charge a, Charge b) {
    return a.step().equals(b.step()) && a.type() == b.type();
  }

  /** Returns the run with everything mended, as far as that goes. */
  private Outcome all() {
    Played best = run;
    Played now = run;
    for (int round = 0; round < ROUNDS && !now.sheet().charges().isEmpty(); round++) {
      Optional<Edit> edit = edit(now);
      if (edit.isEmpty()) {
        break;
      }
      now = play(edit.get().on(RecordedInputs.of(now.entries(), reader)));
      best = now.sheet().points() >= best.sheet().points() ? now : best;
    }
    return best.outcome();
  }

  private Optional<Edit> edit(Played now) {
    List<Edit> edits = new ArrayList<>();
    for (Charge charge : now.sheet().charges()) {
      List<Edit> ways = mending.ways(charge, now);
      if (!ways.isEmpty()) {
        edits.add(ways.get(ways.size() - 1));
      }
    }
    return edits.stream().reduce(Edit::and);
  }

  private Played play(List<TimedInput> inputs) {
    return Played.play(setup, new RecordedInputs(inputs));
  }
}
