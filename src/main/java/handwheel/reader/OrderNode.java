package handwheel.reader;

import handwheel.ship.Order;
import handwheel.ship.OrderResult;
import handwheel.ship.OrderText;
import java.util.Optional;

/** Reads an order and puts its fault where the wrong word stands. */
final class OrderNode implements NodeReader<Order> {
  private final OrderText orders;

  OrderNode(OrderText orders) {
    this.orders = orders;
  }

  @Override
  public Optional<Order> read(YamlNode node, Findings findings) {
    return Scalars.scalar(node, "an order", findings)
        .filter(s -> Scalars.text(Limits.ORDER_CHARS).read(s, findings).isPresent())
        .flatMap(s -> order(s, findings));
  }

  private Optional<Order> order(YamlNode.Scalar scalar, Findings findings) {
    OrderResult result = orders.read(scalar.text());
    if (result instanceof OrderResult.NotUnderstood fault) {
      findings.add(
          FindingId.ORDER_NOT_UNDERSTOOD,
          scalar.spotAt(fault.column() - 1),
          fault.message(),
          fault.mend());
      return Optional.empty();
    }
    return Optional.of(((OrderResult.Understood) result).order());
  }
}
