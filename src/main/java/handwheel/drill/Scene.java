package handwheel.drill;

import handwheel.logbook.Entry;
import handwheel.logbook.EntrySink;
import handwheel.plant.Plant;
import handwheel.plant.Port;
import handwheel.plant.Zone;
import handwheel.ship.Place;
import handwheel.ship.Ship;

/** What everybody in a run shares: the ship, the plant, the gauges, the clock, the entries. */
final class Scene {
  /** Dose a second in the jet itself; contact injures at once. Engineering estimate. */
  private static final double JET_DOSE_PER_S = 1;

  /** From the middle of an oil fire to somebody at its place, m; engineering estimate. */
  private static final double BESIDE_FIRE_M = 2;

  /** From there to somebody at a place near it, m; engineering estimate. */
  private static final double NEAR_FIRE_M = 5;

  final Ship ship;
  final Plant plant;
  final Roads roads;
  final Instruments instruments;
  final PortTravels travels = new PortTravels();
  final Troubles troubles = new Troubles();
  private final EntrySink out;

  /** The tick being done. */
  long now;

  /** Where the trainee stands. */
  Place traineeAt;

  private boolean isRoaring;

  Scene(Ship ship, Plant plant, EntrySink out) {
    this.ship = ship;
    this.plant = plant;
    this.roads = new Roads(ship);
    this.instruments = new Instruments(ship.gauges());
    this.out = out;
    this.traineeAt = ship.place(supervisorPlace(ship)).orElseThrow();
  }

  private static String supervisorPlace(Ship ship) {
    return ship.watchstander(Ship.SUPERVISOR).orElseThrow().at();
  }

  void log(Entry entry) {
    out.accept(entry);
  }

  /** Looks whether steam roars in the room; once a tick, after the plant's evaluation. */
  void listen() {
    isRoaring = false;
    for (Place p : ship.places()) {
      isRoaring |= isJetAt(p);
    }
  }

  /** Returns whether a voice is drowned in the fire room. */
  boolean isRoaring() {
    return isRoaring;
  }

  private boolean isJetAt(Place place) {
    return place.leakPort().isPresent()
        && LeakFlows.kgPerS(plant, place.leakPort().get()) > LeakFlows.JET_KG_PER_S;
  }

  /** Returns whether a jet of steam reaches a place. */
  boolean isInJet(Place place) {
    if (!isRoaring) {
      return false;
    }
    if (isJetAt(place)) {
      return true;
    }
    for (String id : place.near()) {
      if (isJetAt(ship.place(id).orElseThrow())) {
        return true;
      }
    }
    return false;
  }

  /** Returns the heat dose a second of a person standing at a place. */
  double doseRatePerS(Place place) {
    if (place.zone() == Zone.OUTSIDE) {
      return 0;
    }
    double contact = isRoaring && isJetAt(place) ? JET_DOSE_PER_S : 0;
    return plant.doseRatePerS(place.zone()) + contact + radiantDoseRatePerS(place);
  }

  /** Heat of an oil fire where it burns and at the places near it; elsewhere it is hidden. */
  private double radiantDoseRatePerS(Place place) {
    if (plant.radiantDoseRatePerS(BESIDE_FIRE_M) <= 0) {
      return 0;
    }
    if (isFireAt(place)) {
      return plant.radiantDoseRatePerS(BESIDE_FIRE_M);
    }
    for (String id : place.near()) {
      if (isFireAt(ship.place(id).orElseThrow())) {
        return plant.radiantDoseRatePerS(NEAR_FIRE_M);
      }
    }
    return 0;
  }

  private static boolean isFireAt(Place place) {
    return place.leakPort().filter(p -> p == Port.OIL_SPRAY).isPresent();
  }

  /** Returns the dose of asphyxiant gas a second of a person standing at a place. */
  double gasDoseRatePerS(Place place) {
    return plant.gasDoseRatePerS(place.zone());
  }

  /** Returns after how many ticks a man standing there is hurt at the rate of now. */
  long hurtTicks(Place place) {
    double perS = StrictMath.max(doseRatePerS(place), gasDoseRatePerS(place));
    double perTick = perS / Engine.TICKS_PER_S;
    double ticks = perTick > 0 ? Person.HURT_DOSE / perTick : Entry.NO_HURT_TICKS;
    return (long) StrictMath.min(ticks, Entry.NO_HURT_TICKS);
  }
}
