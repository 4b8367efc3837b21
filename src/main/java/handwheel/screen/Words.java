package handwheel.screen;

import handwheel.ship.Fitting;
import handwheel.ship.Gauge;
import handwheel.ship.Place;
import handwheel.ship.Ship;
import handwheel.ship.Verb;
import handwheel.ship.Watchstander;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Every word an order can be made of. */
final class Words {
  private Words() {}

  static List<String> of(Ship ship, List<String> messages) {
    List<String> words = new ArrayList<>();
    ship.watch().stream().map(Watchstander::id).forEach(words::add);
    words.addAll(List.of("everyone", "leave", "muster", "belay", "report", "read", "go", "look"));
    words.addAll(List.of("to", "from"));
    Arrays.stream(Verb.values()).map(Verb::word).forEach(words::add);
    ship.fittings().stream().map(Fitting::id).forEach(words::add);
    ship.gauges().stream().map(Gauge::id).forEach(words::add);
    ship.places().stream().map(Place::id).forEach(words::add);
    words.addAll(messages);
    return words.stream().distinct().toList();
  }

  /** Returns whether a typed word begins a word, part by part between the hyphens. */
  static boolean begins(String typed, String word) {
    String[] typedParts = typed.split("-", -1);
    String[] parts = word.split("-", -1);
    if (typedParts.length > parts.length) {
      return false;
    }
    for (int i = 0; i < typedParts.length; i++) {
      if (!parts[i].startsWith(typedParts[i])) {
        return false;
      }
    }
    return true;
  }
}
