package handwheel.drill;

import handwheel.casualty.CrewState;
import handwheel.plant.Port;
import handwheel.plant.Quantity;
import handwheel.plant.StateWalker;
import handwheel.ship.Fitting;
import handwheel.ship.Gauge;
import handwheel.ship.Order;
import handwheel.ship.PortMove;
import handwheel.units.Measure;
import handwheel.units.Unit;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * Who holds what by hand. The checkman always holds the level; pumpman and blowerman hold when
 * told. A man who leaves his station leaves his valve where it is.
 */
final class HandLaws implements Holding {
  private final Scene scene;
  private final CheckmanLaw check;
  private final PumpmanLaw pump = new PumpmanLaw(PumpmanLimits.USUAL);
  private final BlowermanLaw blower = new BlowermanLaw(BlowermanLimits.USUAL);
  private final Optional<Station> checkman;
  private final Optional<Station> pumpman;
  private final Optional<Station> blowerman;
  private boolean isChecking;

  /** What a man sees: the true value, unless his gauge is wrong. */
  private final ToDoubleFunction<Quantity> eyes;

  /** A holder and where he stands to hold. */
  private record Station(Person person, String place) {
    boolean isManned() {
      return !person.isDown() && person.legs.at().id().equals(place) && !person.legs.isWalking();
    }
  }

  HandLaws(Scene scene, List<Person> people, CrewState state) {
    this.scene = scene;
    this.eyes = q -> scene.instruments.seen(scene.plant, q);
    this.check =
        new CheckmanLaw(state == CrewState.DRILLED ? CheckmanSkill.DRILLED : CheckmanSkill.GREEN);
    this.checkman = holder(people, Quantity.DRUM_LEVEL);
    this.pumpman = holder(people, Quantity.FUEL_HEADER_PRESSURE);
    this.blowerman = holder(people, Quantity.STACK_BLACK);
    this.isChecking = checkman.isPresent();
    check.takeOver(scene.plant);
  }

  private Optional<Station> holder(List<Person> people, Quantity quantity) {
    return people.stream()
        .filter(p -> p.watch.holds().stream().anyMatch(g -> gauge(g).of() == quantity))
        .findFirst()
        .map(p -> new Station(p, p.legs.at().id()));
  }

  private Gauge gauge(String id) {
    return scene.ship.gauge(id).orElseThrow();
  }

  @Override
  public boolean hold(Person person, Order.Work order) {
    String id = order.fittings().get(0);
    if (!person.watch.holds().contains(id)) {
      return false;
    }
    Gauge gauge = gauge(id);
    Optional<Measure> at = order.setting().flatMap(s -> s.measure());
    return switch (gauge.of()) {
      case DRUM_LEVEL -> takeCheck();
      case STACK_BLACK -> trim();
      case FUEL_HEADER_PRESSURE -> psig(at).map(this::holdHeader).orElse(false);
      case DRUM_PRESSURE -> psig(at).map(this::holdDrum).orElse(false);
      default -> false;
    };
  }

  private static Optional<Double> psig(Optional<Measure> at) {
    return at.filter(m -> m.unit() == Unit.PSIG).map(Measure::figure);
  }

  private boolean takeCheck() {
    check.takeOver(scene.plant);
    isChecking = true;
    return true;
  }

  private boolean trim() {
    blower.trim(scene.plant);
    return true;
  }

  private boolean holdHeader(double psi) {
    pump.holdHeader(scene.plant, psi);
    return true;
  }

  private boolean holdDrum(double psi) {
    pump.holdDrum(scene.plant, psi);
    return true;
  }

  @Override
  public void handTaken(Fitting fitting) {
    fitting.acts().values().stream()
        .flatMap(List::stream)
        .map(PortMove::port)
        .forEach(this::release);
  }

  private void release(Port port) {
    if (port == Port.FEED_CHECK) {
      isChecking = false;
    } else if (port == Port.FUEL_GOVERNOR) {
      pump.stop();
    } else if (port == Port.BLOWER_1_STEAM || port == Port.BLOWER_2_STEAM) {
      blower.stop();
    }
  }

  @Override
  public void tick() {
    if (isChecking && isManned(checkman) && !isJammed(Port.FEED_CHECK)) {
      check.tick(scene.plant, eyes);
    }
    if (isManned(pumpman) && !isJammed(Port.FUEL_GOVERNOR)) {
      pump.tick(scene.plant, eyes);
    }
    boolean isFree = !isJammed(Port.BLOWER_1_STEAM) && !isJammed(Port.BLOWER_2_STEAM);
    if (isManned(blowerman) && isFree) {
      blower.tick(scene.plant, eyes);
    }
  }

  private boolean isJammed(Port port) {
    return scene.troubles.isJammed(port);
  }

  private static boolean isManned(Optional<Station> station) {
    return station.isPresent() && station.get().isManned();
  }

  @Override
  public void walk(StateWalker walker) {
    walker.visit("checkman.is-checking", isChecking ? 1 : 0);
    check.walk(walker);
    pump.walk(walker);
    blower.walk(walker);
  }
}
