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
    all.addAll(own);
    return all;
  }

  private List<TimedInput> sendings(TimedInput act, Played run) {
    String who = act.input() instanceof Input.Said s ? s.order().text().split(" ", 2)[0] : "";
    List<String> said = run.orders().stream().map(Entry.OrderSaid::say).toList();
    return RecordedInputs.of(List.copyOf(witness.orders()), reader).stream()
        .filter(i -> i.tick() < act.tick() && isSending(i, who, said))
        .toList();
  }

  private static boolean isSending(TimedInput input, String who, List<String> said) {
    return input.input() instanceof Input.Said s
        && s.order() instanceof Order.Go g
        && g.who().equals(who)
        && !said.contains(g.text());
  }
}
