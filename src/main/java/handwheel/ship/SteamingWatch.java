package handwheel.ship;

import java.util.List;

/**
 * What an ordinary watch on this ship is like, for drills in which nobody knows what will happen.
 *
 * @param calls what is called to the fire room while nothing happens; may be none
 * @param reports ids of the reports a watch may pass, whatever the casualty
 * @param hazards what people are warned of before a drill that does not say what it is
 * @param currencyDays after so many days a drill is due again in any case
 */
public record SteamingWatch(
    List<String> calls, List<String> reports, List<Hazard> hazards, int currencyDays) {
  /** Where a ship says nothing of it; common practice, no source. */
  public static final int USUAL_CURRENCY_DAYS = 90;

  /** A ship whose file says nothing of it. */
  public static final SteamingWatch NONE =
      new SteamingWatch(List.of(), List.of(), List.of(), USUAL_CURRENCY_DAYS);

  /**
   * Something in a fire room that hurts people.
   *
   * @param id lower-kebab id
   * @param signal {@code DANGER}, {@code WARNING} or {@code CAUTION}
   * @param hazard what it is
   * @param consequence what it does
   * @param avoid how to stay clear of it
   */
  public record Hazard(String id, String signal, String hazard, String consequence, String avoid) {}

  /**
   * Copies the lists.
   *
   * @param calls what is called to the fire room while nothing happens; may be none
   * @param reports ids of the reports a watch may pass, whatever the casualty
   * @param hazards what people are warned of before a drill that does not say what it is
   * @param currencyDays after so many days a drill is due again in any case
   */
  public SteamingWatch {
    calls = List.copyOf(calls);
    reports = List.copyOf(reports);
    hazards = List.copyOf(hazards);
  }
}
