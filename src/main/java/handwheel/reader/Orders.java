package handwheel.reader;

import handwheel.ship.Order;
import handwheel.ship.OrderResult;
import handwheel.ship.OrderText;
import handwheel.ship.Ship;
import java.util.List;
import java.util.Optional;

/** Reads orders. */
final class Orders {
  private Orders() {}

  static NodeReader<Order> of(Ship ship, List<String> messages) {
    OrderText reader = new OrderText(ship, messages);
    return (node, findings) ->
        Scalars.scalar(node, "an order", findings).flatMap(s -> order(s, reader, findings));
  }

  private static Optional<Order> order(
      YamlNode.Scalar scalar, OrderText reader, Findings findings) {
    OrderResult result = reader.read(scalar.text());
    if (result instanceof OrderResult.Understood u) {
      return Optional.of(u.order());
    }
    OrderResult.NotUnderstood n = (OrderResult.NotUnderstood) result;
    findings.add(FindingId.BAD_ORDER, scalar.spotAt(n.column() - 1), n.message(), n.mend());
    return Optional.empty();
  }
}
