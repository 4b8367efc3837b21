package handwheel.debrief;

import handwheel.drill.Input;
import handwheel.drill.Player;
import handwheel.logbook.Entry;
import handwheel.ship.OrderResult;
import handwheel.ship.OrderText;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/** Plays the inputs of a record again, each at its tick. */
public final class RecordedInputs implements Player {
  private final Deque<TimedInput> inputs;

  /**
   * Makes a player.
   *
   * @param entries entries of the record; those that are no inputs are passed over
   * @param orders reads the orders; an order it does not understand is left out, which shows as a
   *     difference
   */
  public RecordedInputs(List<Entry> entries, OrderText orders) {
    this(of(entries, orders));
  }

  /** Makes a player of inputs; those of the same tick keep their order. */
  RecordedInputs(List<TimedInput> inputs) {
    List<TimedInput> sorted = new ArrayList<>(inputs);
    sorted.sort(Comparator.comparingLong(TimedInput::tick));
    this.inputs = new ArrayDeque<>(sorted);
  }

  /** Returns the inputs among the entries of a record. */
  static List<TimedInput> of(List<Entry> entries, OrderText orders) {
    return entries.stream().flatMap(e -> input(e, orders).stream()).toList();
  }

  private static Optional<TimedInput> input(Entry e, OrderText orders) {
    if (e instanceof Entry.OrderSaid o) {
      return order(o, orders);
    }
    if (e instanceof Entry.Acknowledged a) {
      return Optional.of(new TimedInput(a.t(), new Input.Acknowledged()));
    }
    if (e instanceof Entry.Stopped s) {
      return Optional.of(new TimedInput(s.t(), new Input.Stopped()));
    }
    if (e instanceof Entry.Resumed r) {
      return Optional.of(new TimedInput(r.t(), new Input.Resumed()));
    }
    return e instanceof Entry.Ended d
        ? Optional.of(new TimedInput(d.t(), new Input.Ended(d.why())))
        : Optional.empty();
  }

  private static Optional<TimedInput> order(Entry.OrderSaid said, OrderText orders) {
    return orders.read(said.say()) instanceof OrderResult.Understood u
        ? Optional.of(new TimedInput(said.t(), new Input.Said(u.order(), said.from())))
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
