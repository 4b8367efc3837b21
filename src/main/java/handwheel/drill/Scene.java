package handwheel.drill;

import handwheel.logbook.Entry;
import handwheel.logbook.EntrySink;
import handwheel.plant.Plant;
import handwheel.plant.Zone;
import handwheel.ship.Place;
import handwheel.ship.Ship;

/** What everybody in a run shares: the ship, the plant, the gauges, the clock, the entries. */
final class Scene {
  /** Dose a second in the jet itself; contact injures at once. Engineering estimate. */
  private static final double JET_DOSE_PER_S = 1;

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

  /** Returns the dose a second of a person standing at a place. */
  double doseRatePerS(Place place) {
    if (place.zone() == Zone.OUTSIDE) {
      return 0;
    }
    double contact = isRoaring && isJetAt(place) ? JET_DOSE_PER_S : 0;
    return plant.doseRatePerS(place.zone()) + contact;
  }

  /** Returns after how many ticks a man standing there is hurt at the rate of now. */
  long hurtTicks(Place place) {
    double perTick = doseRatePerS(place) / Engine.TICKS_PER_S;
    double ticks = perTick > 0 ? Person.HURT_DOSE / perTick : Entry.NO_HURT_TICKS;
    return (long) StrictMath.min(ticks, Entry.NO_HURT_TICKS);
  }
}
