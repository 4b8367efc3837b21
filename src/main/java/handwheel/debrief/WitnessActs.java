package handwheel.debrief;

import handwheel.drill.Input;
import handwheel.logbook.Entry;
import handwheel.scoring.StepResult;
import handwheel.ship.Order;
import handwheel.ship.OrderText;
import java.util.ArrayList;
import java.util.List;

/** The orders by which the witness does each step, in a run with the same seed. */
final class WitnessActs {
  private static final int LOOKS = 3;
  private static final long LOOK_TICKS = 300;

  private final Played witness;
  private final OrderText reader;

  WitnessActs(Played witness, OrderText reader) {
    this.witness = witness;
    this.reader = reader;
  }

  /**
   * Returns the orders for a step, with the sending of the man who does it if nobody has said that
   * yet.
   *
   * @param step id of the step
   * @param earliest none of the step's own orders comes before this tick
   * @param run where they are put in
   */
  List<TimedInput> of(String step, long earliest, Played run) {
    List<Integer> numbers = witness.step(step).map(StepResult::orders).orElse(List.of());
    List<TimedInput> own = new ArrayList<>();
    List<TimedInput> all = new ArrayList<>();
    for (Entry.OrderSaid said : witness.orders()) {
      if (numbers.contains(said.n())) {
        for (TimedInput i : RecordedInputs.of(List.of(said), reader)) {
          own.add(i.at(Math.max(i.tick(), earliest + own.size())));
        }
      }
    }
    own.forEach(i -> all.addAll(sendings(i, run)));
    own.forEach(i -> all.addAll(untilSeen(i)));
    return all;
  }

  /** A gauge is read again until it shows what is waited for: looking costs nothing. */
  private static List<TimedInput> untilSeen(TimedInput act) {
    List<TimedInput> all = new ArrayList<>(List.of(act));
    boolean isLook = act.input() instanceof Input.Said s && s.order() instanceof Order.Read;
    for (int i = 1; isLook && i <= LOOKS; i++) {
      all.add(act.at(act.tick() + i * LOOK_TICKS));
    }
    return all;
  }

  /** The witness's sending of the man, unless he was sent as early as that. */
  private List<TimedInput> sendings(TimedInput act, Played run) {
    String who = act.input() instanceof Input.Said s ? s.order().text().split(" ", 2)[0] : "";
    return RecordedInputs.of(List.copyOf(witness.orders()), reader).stream()
        .filter(i -> i.tick() < act.tick() && isSending(i, who) && !isSaid(i, run))
        .toList();
  }

  private static boolean isSending(TimedInput input, String who) {
    return input.input() instanceof Input.Said s
        && s.order() instanceof Order.Go g
        && g.who().equals(who);
  }

  private static boolean isSaid(TimedInput sending, Played run) {
    String text = ((Input.Said) sending.input()).order().text();
    return run.orders().stream().anyMatch(o -> o.t() <= sending.tick() && o.say().equals(text));
  }
}
