package handwheel.scoring;

import handwheel.ship.Order;
import java.util.Optional;

/** Whom an order is for. */
final class ManTold implements Order.Visitor<Optional<String>> {
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
    return order.who();
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
    return Optional.of(order.who());
  }
}
