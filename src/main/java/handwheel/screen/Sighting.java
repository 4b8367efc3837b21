package handwheel.screen;

import handwheel.drill.Sight;
import handwheel.ship.Ship;
import handwheel.ship.Watchstander;
import java.util.List;

/**
 * What the trainee sees and feels at one moment from where he stands.
 *
 * @param tick the coming tick
 * @param place where he stands or stood last; empty before the drill
 * @param isWalking whether he is on his way from there
 * @param air how the air feels and whether voices are drowned; may be empty
 * @param dials the gauges before his eyes
 * @param people who is seen, in roster order
 */
record Sighting(
    long tick, String place, boolean isWalking, String air, List<Dial> dials, List<Seen> people) {
  /** Before the drill there is nothing to see. */
  static final Sighting NONE = new Sighting(0, "", false, "", List.of(), List.of());

  Sighting {
    dials = List.copyOf(dials);
    people = List.copyOf(people);
  }

  /**
   * One of the watch in sight.
   *
   * @param title his station in words
   * @param doing what he is seen to do
   */
  record Seen(String title, String doing) {
    String sentence() {
      return Character.toUpperCase(title.charAt(0)) + title.substring(1) + ": " + doing;
    }

    boolean isIdle() {
      return doing.equals("standing by");
    }
  }

  static Sighting of(Sight sight, DoingWords words) {
    String roar = sight.isRoaring() ? "A roar drowns every voice. " : "";
    return new Sighting(
        sight.now(),
        sight.place().name(),
        sight.isWalking(),
        (roar + sight.air()).strip(),
        sight.gauges().stream().map(g -> Dial.of(g, sight.shown(g))).toList(),
        sight.watch().stream()
            .filter(w -> !w.id().equals(Ship.SUPERVISOR) && sight.sees(w.id()))
            .map(w -> seen(w, sight, words))
            .toList());
  }

  private static Seen seen(Watchstander man, Sight sight, DoingWords words) {
    return new Seen(man.title(), words.of(sight.doing(man.id())));
  }
}
