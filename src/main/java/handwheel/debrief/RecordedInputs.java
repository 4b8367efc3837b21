package handwheel.debrief;

import handwheel.drill.Input;
import handwheel.drill.Player;
import handwheel.logbook.Entry;
import handwheel.ship.OrderResult;
import handwheel.ship.OrderText;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/** Plays the inputs of a record again, each at its tick. */
public final class RecordedInputs implements Player {
  private final Deque<At> inputs = new ArrayDeque<>();

  /** An input and its tick. */
  private record At(long tick, Input input) {}

  /**
   * Makes a player.
   *
   * @param entries entries of the record; those that are no inputs are passed over
   * @param orders reads the orders; an order it does not understand is left out, which shows as a
   *     difference
   */
  public RecordedInputs(List<Entry> entries, OrderText orders) {
    for (Entry e : entries) {
      if (e instanceof Entry.OrderSaid o) {
        order(o, orders).ifPresent(inputs::add);
      } else if (e instanceof Entry.Acknowledged a) {
        inputs.add(new At(a.t(), new Input.Acknowledged()));
      } else if (e instanceof Entry.Stopped s) {
        inputs.add(new At(s.t(), new Input.Stopped()));
      } else if (e instanceof Entry.Resumed r) {
        inputs.add(new At(r.t(), new Input.Resumed()));
      } else if (e instanceof Entry.Ended d) {
        inputs.add(new At(d.t(), new Input.Ended(d.why())));
      }
    }
  }

  private static Optional<At> order(Entry.OrderSaid said, OrderText orders) {
    return orders.read(said.say()) instanceof OrderResult.Understood u
        ? Optional.of(new At(said.t(), new Input.Said(u.order(), said.from())))
        : Optional.empty();
  }

  @Override
  public void note(Entry entry) {
    // A record does not listen: it only says again what was said.
  }

  @Override
  public List<Input> inputs(long now) {
    List<Input> due = new ArrayList<>();
    while (!inputs.isEmpty() && inputs.peekFirst().tick() <= now) {
      due.add(inputs.removeFirst().input());
    }
    return due;
  }
}
