package handwheel.screen;

import handwheel.debrief.Sentences;
import handwheel.drill.Sight;
import handwheel.ship.Ship;
import handwheel.ship.Watchstander;
import java.util.List;

/**
 * What the trainee sees at one moment.
 *
 * @param clock minutes and seconds of the drill
 * @param place where he stands
 * @param air how the air feels and whether voices are drowned; may be empty
 * @param dials the gauges before his eyes
 * @param people who is seen and what he does
 */
record Look(String clock, String place, String air, List<Dial> dials, List<String> people) {
  Look {
    dials = List.copyOf(dials);
    people = List.copyOf(people);
  }

  static Look of(Sight sight, Sentences sentences) {
    String place = (sight.isWalking() ? "leaving the " : "at the ") + sight.place().name();
    String roar = sight.isRoaring() ? "A roar drowns every voice. " : "";
    return new Look(
        Sentences.clock(sight.now()),
        place,
        roar + sight.air(),
        sight.gauges().stream().map(g -> Dial.of(g, sight.shown(g))).toList(),
        sight.watch().stream()
            .map(Watchstander::id)
            .filter(id -> !id.equals(Ship.SUPERVISOR) && sight.sees(id))
            .map(id -> sentences.title(id) + ": " + sight.doing(id))
            .toList());
  }
}
