package handwheel.ship;

import handwheel.plant.PlantNumbers;
import java.util.List;
import java.util.Optional;

/**
 * A ship, as read from her folder.
 *
 * @param id lower-kebab id
 * @param name her name
 * @param sha256 hash over the files she was read from, lower-case hex
 * @param numbers sizes of her plant
 * @param places every place, in the file's order
 * @param ways the ways between them
 * @param fittings every fitting
 * @param gauges every gauge
 * @param watch the watch in roster order; the supervisor first
 * @param standing what drilled men do unordered
 * @param conditions named initial conditions
 * @param steaming what an ordinary watch is like
 */
public record Ship(
    String id,
    String name,
    String sha256,
    PlantNumbers numbers,
    List<Place> places,
    List<Way> ways,
    List<Fitting> fittings,
    List<Gauge> gauges,
    List<Watchstander> watch,
    List<StandingAct> standing,
    List<Condition> conditions,
    SteamingWatch steaming) {
  /** Station id of the trainee. */
  public static final String SUPERVISOR = "supervisor";

  /**
   * Copies the lists.
   *
   * @param id lower-kebab id
   * @param name her name
   * @param sha256 hash over the files she was read from, lower-case hex
   * @param numbers sizes of her plant
   * @param places every place, in the file's order
   * @param ways the ways between them
   * @param fittings every fitting
   * @param gauges every gauge
   * @param watch the watch in roster order; the supervisor first
   * @param standing what drilled men do unordered
   * @param conditions named initial conditions
   * @param steaming what an ordinary watch is like
   */
  public Ship {
    places = List.copyOf(places);
    ways = List.copyOf(ways);
    fittings = List.copyOf(fittings);
    gauges = List.copyOf(gauges);
    watch = List.copyOf(watch);
    standing = List.copyOf(standing);
    conditions = List.copyOf(conditions);
  }

  /**
   * Makes a ship that says nothing of an ordinary watch.
   *
   * @param id lower-kebab id
   * @param name her name
   * @param sha256 hash over the files she was read from, lower-case hex
   * @param numbers sizes of her plant
   * @param places every place, in the file's order
   * @param ways the ways between them
   * @param fittings every fitting
   * @param gauges every gauge
   * @param watch the watch in roster order; the supervisor first
   * @param standing what drilled men do unordered
   * @param conditions named initial conditions
   */
  public Ship(
      String id,
      String name,
      String sha256,
      PlantNumbers numbers,
      List<Place> places,
      List<Way> ways,
      List<Fitting> fittings,
      List<Gauge> gauges,
      List<Watchstander> watch,
      List<StandingAct> standing,
      List<Condition> conditions) {
    this(
        id,
        name,
        sha256,
        numbers,
        places,
        ways,
        fittings,
        gauges,
        watch,
        standing,
        conditions,
        SteamingWatch.NONE);
  }

  /**
   * Finds a place.
   *
   * @param id its id
   * @return the place, or empty
   */
  public Optional<Place> place(String id) {
    return places.stream().filter(p -> p.id().equals(id)).findFirst();
  }

  /**
   * Finds a fitting.
   *
   * @param id its id
   * @return the fitting, or empty
   */
  public Optional<Fitting> fitting(String id) {
    return fittings.stream().filter(f -> f.id().equals(id)).findFirst();
  }

  /**
   * Finds a gauge.
   *
   * @param id its id
   * @return the gauge, or empty
   */
  public Optional<Gauge> gauge(String id) {
    return gauges.stream().filter(g -> g.id().equals(id)).findFirst();
  }

  /**
   * Finds a watchstander.
   *
   * @param id his station
   * @return the watchstander, or empty
   */
  public Optional<Watchstander> watchstander(String id) {
    return watch.stream().filter(w -> w.id().equals(id)).findFirst();
  }

  /**
   * Finds an initial condition.
   *
   * @param id its id
   * @return the condition, or empty
   */
  public Optional<Condition> condition(String id) {
    return conditions.stream().filter(c -> c.id().equals(id)).findFirst();
  }
}
