package handwheel.casualty;

import handwheel.diagnostics.SourceSpot;
import handwheel.ship.SteamingWatch;
import java.util.List;

/**
 * A caution, shown and acknowledged before the drill starts and again before the step it belongs
 * to. Its parts are informed by ANSI Z535.6 (from memory): signal word, hazard, consequence, how to
 * avoid it.
 *
 * @param id lower-kebab id
 * @param signal {@code DANGER}, {@code WARNING} or {@code CAUTION}
 * @param hazard what it is
 * @param consequence what it does
 * @param avoid how to stay clear of it
 * @param before ids of the steps it belongs to
 * @param spot where it stands in the script
 */
public record Caution(
    String id,
    String signal,
    String hazard,
    String consequence,
    String avoid,
    List<String> before,
    SourceSpot spot) {
  /**
   * Copies the list.
   *
   * @param id lower-kebab id
   * @param signal {@code DANGER}, {@code WARNING} or {@code CAUTION}
   * @param hazard what it is
   * @param consequence what it does
   * @param avoid how to stay clear of it
   * @param before ids of the steps it belongs to
   * @param spot where it stands in the script
   */
  public Caution {
    before = List.copyOf(before);
  }

  /**
   * Makes a caution that belongs to no step.
   *
   * @param hazard what the ship warns of
   * @return the caution
   */
  public static Caution of(SteamingWatch.Hazard hazard) {
    return new Caution(
        hazard.id(),
        hazard.signal(),
        hazard.hazard(),
        hazard.consequence(),
        hazard.avoid(),
        List.of(),
        SourceSpot.wholeFile(""));
  }
}
