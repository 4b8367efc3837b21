package handwheel.drill;

import handwheel.ship.Order;
import handwheel.ship.Ship;
import java.util.Optional;

/** Whom an order sends somewhere. */
final class Addressed implements Order.Visitor<Optional<String>> {
  private static final Addressed INSTANCE = new Addressed();

  private Addressed() {}

  /** Returns the station id; empty where nobody in particular is sent. */
  static Optional<String> who(Order order) {
    return order.accept(INSTANCE);
  }

  @Override
  public Optional<String> work(Order.Work order) {
    return Optional.of(order.who());
  }

  @Override
  public Optional<String> go(Order.Go order) {
    return Optional.of(order.who());
  }

  @Override
  public Optional<String> look(Order.Look order) {
    return Optional.of(order.who());
  }

  @Override
  public Optional<String> read(Order.Read order) {
    return Optional.of(order.who().orElse(Ship.SUPERVISOR));
  }

  @Override
  public Optional<String> report(Order.Report order) {
    return Optional.empty();
  }

  @Override
  public Optional<String> everyoneLeave(Order.EveryoneLeave order) {
    return Optional.empty();
  }

  @Override
  public Optional<String> muster(Order.Muster order) {
    return Optional.empty();
  }

  @Override
  public Optional<String> belay(Order.Belay order) {
    return Optional.empty();
  }
}
