package handwheel.scoring;

import handwheel.casualty.Bound;
import handwheel.casualty.Step;
import handwheel.casualty.StepTest;
import handwheel.logbook.Entry;
import handwheel.ship.Gauge;
import handwheel.ship.Ship;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds when a step was done. An act counts the first time; a gauge may be read as often as wanted,
 * so a proof has one act for every reading that kept its bound and the choice is made later.
 */
final class Finder implements StepTest.Visitor<List<Act>> {
  private final Ship ship;
  private final RunLog log;
  private final Movements movements;
  private final Fates fates;

  /** What came before this tick was not done for the step. */
  private final long fromTick;

  Finder(Ship ship, RunLog log) {
    this(ship, log, 0);
  }

  private Finder(Ship ship, RunLog log, long fromTick) {
    this.fromTick = fromTick;
    this.ship = ship;
    this.log = log;
    this.movements = new Movements(ship, log);
    this.fates = new Fates(log);
  }

  /** A finder of what was done from a tick on. */
  Finder from(long tick) {
    return new Finder(ship, log, tick);
  }

  /** The ways a step was done, earliest first; none if it was not. */
  List<Act> find(Step step) {
    return step.test().accept(this);
  }

  /** The first order of these words that was not spoiled by a mishearing. */
  @Override
  public List<Act> ordered(StepTest.Ordered test) {
    Aim aim = new Aims(log).ordered(test).get(0);
    return fates.seeking(aim).stream()
        .filter(o -> o.tick() >= fromTick && isGiven(o, aim))
        .limit(1)
        .map(Finder::byOrder)
        .toList();
  }

  private boolean isGiven(Told told, Aim aim) {
    return log.wrongRepeat(told).isEmpty() || isCaughtAndSaidAgain(told, aim);
  }

  private boolean isCaughtAndSaidAgain(Told told, Aim aim) {
    return fates.of(told, aim, log.lastTick()).is(Fate.Kind.CREW_OR_GEAR)
        && fates.seeking(aim).stream().anyMatch(o -> o.n() > told.n());
  }

  private static Act byOrder(Told told) {
    Deed deed = new Deed(Optional.of(told), Optional.of(told), Optional.empty());
    long begun = told.firstKeyTick();
    return new Act(begun, told.tick(), begun, begun, List.of(deed));
  }

  @Override
  public List<Act> fittingIs(StepTest.FittingIs test) {
    List<Act> parts = new ArrayList<>();
    for (String fitting : test.fittings()) {
      movements.reaching(fitting, Bearing.wanted(test.isOpen())).stream()
          .map(m -> byMovement(m, Aim.of(fitting, Bearing.wanted(test.isOpen()))))
          .filter(act -> act.instantTick() >= fromTick)
          .findFirst()
          .ifPresent(parts::add);
    }
    return parts.size() < test.fittings().size()
        ? List.of()
        : parts.stream().reduce(Act::and).stream().toList();
  }

  private Act byMovement(Entry.Moved moved, Aim aim) {
    Optional<Told> told = log.order(moved.n());
    long begunTick = told.map(Told::firstKeyTick).orElseGet(() -> beganTick(moved));
    long instantTick = told.map(Told::tick).orElse(begunTick);
    Optional<Told> first =
        fates.earliest(aim, told.map(Told::n).orElse(Integer.MAX_VALUE), instantTick, true);
    Deed deed = new Deed(told, first.or(() -> told), Optional.of(moved));
    long lostTicks = first.map(f -> instantTick - f.tick()).orElse(0L);
    return new Act(
        first.map(Told::firstKeyTick).orElse(begunTick),
        first.map(Told::tick).orElse(instantTick),
        moved.t(),
        moved.t() - lostTicks,
        List.of(deed));
  }

  private long beganTick(Entry.Moved moved) {
    return log.all(Entry.Began.class)
        .filter(b -> b.n() == moved.n() && b.who().equals(moved.who()))
        .filter(b -> b.fitting().equals(moved.fitting()) && b.t() <= moved.t())
        .mapToLong(Entry.Began::t)
        .reduce((a, b) -> b)
        .orElse(moved.t());
  }

  @Override
  public List<Act> readProof(StepTest.ReadProof test) {
    Aim aim = new Aims(log).readProof(test).get(0);
    return ship.gauge(test.gauge()).stream()
        .flatMap(g -> log.all(Entry.Reading.class).filter(r -> isKept(test.bound(), g, r)))
        .filter(r -> r.t() >= fromTick)
        .map(r -> atTick(r.t(), r.n(), aim))
        .toList();
  }

  private static boolean isKept(Bound bound, Gauge gauge, Entry.Reading r) {
    long milli = thousandths(bound, gauge);
    return r.gauge().equals(gauge.id())
        && (bound.isUpper() ? r.milli() < milli : r.milli() > milli);
  }

  /** The bound in thousandths of the gauge's unit, as readings are entered. */
  private static long thousandths(Bound bound, Gauge gauge) {
    return new BigDecimal(gauge.unit().fromSi(bound.si()))
        .movePointRight(3)
        .setScale(0, RoundingMode.HALF_EVEN)
        .longValue();
  }

  @Override
  public List<Act> reported(StepTest.Reported test) {
    Aim aim = new Aims(log).reported(test).get(0);
    return log.all(Entry.Passed.class)
        .filter(p -> p.message().equals(test.message()) && p.to().equals(test.to()))
        .filter(p -> p.t() >= fromTick)
        .limit(1)
        .map(p -> atTick(p.t(), p.n(), aim))
        .toList();
  }

  @Override
  public List<Act> mustered(StepTest.Mustered test) {
    Aim aim = new Aims(log).mustered(test).get(0);
    return log.all(Entry.Counted.class)
        .filter(c -> c.missing().isBlank() && c.t() >= fromTick)
        .limit(1)
        .map(c -> atTick(c.t(), c.n(), aim))
        .toList();
  }

  /** Something heard at a tick; the time that crew or gear cost before it is not the trainee's. */
  private Act atTick(long tick, int n, Aim aim) {
    Optional<Told> told = log.order(n);
    Optional<Told> first = told.flatMap(o -> fates.earliest(aim, o.n(), o.tick(), false));
    long lostTicks = first.map(f -> told.get().tick() - f.tick()).orElse(0L);
    Deed deed = new Deed(told, first.or(() -> told), Optional.empty());
    return new Act(tick - lostTicks, tick, tick, tick - lostTicks, List.of(deed));
  }
}
