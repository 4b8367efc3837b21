package handwheel.scoring;

import handwheel.casualty.StepTest;
import handwheel.logbook.Entry;
import handwheel.ship.Ship;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/** What the record shows in place of a step that was not done, in words. */
final class Seen implements StepTest.Visitor<String> {
  private final Ship ship;
  private final RunLog log;

  Seen(Ship ship, RunLog log) {
    this.ship = ship;
    this.log = log;
  }

  @Override
  public String ordered(StepTest.Ordered test) {
    return times(new Aims(log).ordered(test));
  }

  @Override
  public String fittingIs(StepTest.FittingIs test) {
    return times(new Aims(log).fittingIs(test));
  }

  private String times(List<Aim> aims) {
    long n =
        log.orders().stream().filter(o -> aims.stream().anyMatch(a -> a.isSoughtBy(o))).count();
    return n == 0 ? "never ordered" : n == 1 ? "ordered once" : "ordered " + n + " times";
  }

  @Override
  public String readProof(StepTest.ReadProof test) {
    return log.all(Entry.Reading.class)
        .filter(r -> r.gauge().equals(test.gauge()))
        .reduce((a, b) -> b)
        .map(r -> "last read " + figure(r) + " at " + Clock.minutes(r.t(), log.zeroTick()))
        .orElse("never read");
  }

  private String figure(Entry.Reading r) {
    String unit = ship.gauge(r.gauge()).map(g -> " " + g.unit().symbol()).orElse("");
    return thousandths(r.milli()) + unit;
  }

  /** A figure entered in thousandths. */
  static String thousandths(long milli) {
    return BigDecimal.valueOf(milli, 3).stripTrailingZeros().toPlainString();
  }

  @Override
  public String reported(StepTest.Reported test) {
    return log.all(Entry.Passed.class)
        .filter(p -> p.message().equals(test.message()))
        .findFirst()
        .map(p -> "passed to " + p.to() + " only")
        .orElse("never passed");
  }

  @Override
  public String mustered(StepTest.Mustered test) {
    Optional<Entry.Counted> last = log.all(Entry.Counted.class).reduce((a, b) -> b);
    return last.map(c -> c.present() + " of " + c.of() + " counted, missing " + c.missing())
        .orElse("never counted");
  }
}
