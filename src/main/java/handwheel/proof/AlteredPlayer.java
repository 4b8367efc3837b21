package handwheel.proof;

import handwheel.drill.Input;
import handwheel.drill.Player;
import handwheel.logbook.Entry;
import handwheel.ship.Order;
import handwheel.ship.OrderResult;
import handwheel.ship.OrderText;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** A witness whose orders are altered on the way from his mouth; he takes them for said. */
final class AlteredPlayer implements Player {
  private final Player witness;
  private final Alteration alteration;
  private final OrderText reader;
  private final List<Late> late = new ArrayList<>();
  private int meant;

  /** An order that is still to be said. */
  private record Late(long tick, Order order) {}

  AlteredPlayer(Player witness, Alteration alteration, OrderText reader) {
    this.witness = witness;
    this.alteration = alteration;
    this.reader = reader;
  }

  @Override
  public void note(Entry entry) {
    witness.note(entry);
  }

  @Override
  public List<Input> inputs(long now) {
    List<Input> inputs = new ArrayList<>();
    for (Input input : witness.inputs(now)) {
      if (input instanceof Input.Said said) {
        take(said.order().text(), now);
      } else {
        inputs.add(input);
      }
    }
    late.sort(Comparator.comparingLong(Late::tick));
    while (!late.isEmpty() && late.get(0).tick() <= now) {
      inputs.add(new Input.Said(late.remove(0).order(), now));
    }
    return inputs;
  }

  private void take(String say, long now) {
    for (Alteration.Saying saying : alteration.of(meant, say)) {
      read(reader, saying.say()).ifPresent(o -> late.add(new Late(now + saying.laterTicks(), o)));
    }
    meant++;
  }

  /** Reads an order; empty if it is none. */
  static Optional<Order> read(OrderText reader, String say) {
    return reader.read(say) instanceof OrderResult.Understood u
        ? Optional.of(u.order())
        : Optional.empty();
  }
}
