package handwheel.screen;

import handwheel.casualty.StepTest;
import handwheel.ship.Order;

/**
 * Whether an order is how a step is done.
 *
 * @param order the order
 */
record Serves(Order order) implements StepTest.Visitor<Boolean> {
  @Override
  public Boolean ordered(StepTest.Ordered test) {
    return order.text().equals(test.order());
  }

  @Override
  public Boolean fittingIs(StepTest.FittingIs test) {
    return order instanceof Order.Work w
        && w.fittings().stream().anyMatch(test.fittings()::contains);
  }

  @Override
  public Boolean readProof(StepTest.ReadProof test) {
    return order instanceof Order.Read r && r.gauge().equals(test.gauge());
  }

  @Override
  public Boolean reported(StepTest.Reported test) {
    return order instanceof Order.Report r && r.message().equals(test.message());
  }

  @Override
  public Boolean mustered(StepTest.Mustered test) {
    return order instanceof Order.Muster;
  }
}
