package handwheel.scoring;

import handwheel.casualty.StepTest;
import handwheel.ship.Order;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** What each kind of test asks for: one aim, or one a fitting. */
final class Aims implements StepTest.Visitor<List<Aim>> {
  private final RunLog log;

  Aims(RunLog log) {
    this.log = log;
  }

  @Override
  public List<Aim> ordered(StepTest.Ordered test) {
    Optional<Order> wanted = log.read(test.order());
    Predicate<Order> seeks = order -> wanted.filter(order::equals).isPresent();
    return List.of(Aim.of(seeks));
  }

  @Override
  public List<Aim> fittingIs(StepTest.FittingIs test) {
    return test.fittings().stream().map(f -> Aim.of(f, Bearing.wanted(test.isOpen()))).toList();
  }

  @Override
  public List<Aim> readProof(StepTest.ReadProof test) {
    return List.of(Aim.of(o -> o instanceof Order.Read r && r.gauge().equals(test.gauge())));
  }

  @Override
  public List<Aim> reported(StepTest.Reported test) {
    return List.of(Aim.of(new Order.Report(test.message(), test.to())::equals));
  }

  @Override
  public List<Aim> mustered(StepTest.Mustered test) {
    return List.of(Aim.of(Order.Muster.class::isInstance));
  }
}
