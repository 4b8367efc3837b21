package handwheel.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What of the trainee's sight is worth a line where nothing can be shown: each gauge when he comes
 * to it, then only when it has moved by a tenth of its scale, and seldom; the air when it changes.
 */
final class Changes {
  private static final double WORTH_SAYING = 0.1;
  private static final long BETWEEN_TICKS = 200;

  private final SortedMap<String, Said> said = new TreeMap<>();
  private String place = "";
  private String air = "";

  private record Said(double share, long tick) {}

  /** Returns what is new, a sentence each. */
  List<String> in(Sighting sighting) {
    List<String> news = new ArrayList<>();
    if (!sighting.isWalking() && !sighting.place().equals(place)) {
      place = sighting.place();
      said.clear();
    }
    if (sighting.place().equals(place)) {
      sighting.dials().forEach(d -> dial(d, sighting.tick(), news));
    }
    if (!sighting.air().equals(air)) {
      air = sighting.air();
      news.add(air.isEmpty() ? "The air is as usual." : air);
    }
    return news;
  }

  private void dial(Dial dial, long tick, List<String> news) {
    Said before = said.get(dial.id());
    if (before == null) {
      news.add(dial.name() + " " + dial.figure());
    } else if (tick - before.tick() >= BETWEEN_TICKS
        && Math.abs(dial.share() - before.share()) >= WORTH_SAYING) {
      String way = dial.share() > before.share() ? "rising" : "falling";
      news.add(dial.name() + " " + dial.figure() + ", " + way);
    } else {
      return;
    }
    said.put(dial.id(), new Said(dial.share(), tick));
  }
}
