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
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Which words can follow in an order. It offers every place and every man, also where they would
 * refuse: what is right is for the trainee to know.
 */
final class OrderGrammar {
  private static final List<String> PLAIN =
      List.of("everyone", "muster", "belay", "report", "read");

  private final Slot start;
  private final Slot verb;
  private final Slot who;
  private final Slot place;
  private final Slot gauge;
  private final Slot message;
  private final SortedMap<String, List<String>> fittings = new TreeMap<>();

  OrderGrammar(Ship ship, List<String> messages) {
    List<String> men = ship.watch().stream().map(Watchstander::id).toList();
    who = Slot.of("a watchstander", men);
    place = Slot.of("a place", ship.places().stream().map(Place::id).toList());
    gauge = Slot.of("a gauge", ship.gauges().stream().map(Gauge::id).toList());
    message = Slot.of("a report", messages);
    start = Slot.of("a watchstander or an order to all", joined(men, PLAIN));
    for (Verb v : Verb.values()) {
      fittings.put(v.word(), fittings(ship, v));
    }
    List<String> verbs = Arrays.stream(Verb.values()).map(Verb::word).toList();
    verb = Slot.of("a verb", joined(verbs, List.of("go", "look", "read")));
  }

  private static List<String> fittings(Ship ship, Verb verb) {
    List<String> ids =
        ship.fittings().stream().filter(f -> !f.moves(verb).isEmpty()).map(Fitting::id).toList();
    return verb == Verb.SET
        ? joined(ids, ship.watch().stream().flatMap(w -> w.holds().stream()).toList())
        : ids;
  }

  private static List<String> joined(List<String> first, List<String> second) {
    List<String> all = new ArrayList<>(first);
    all.addAll(second);
    return all.stream().distinct().toList();
  }

  /** Returns what can follow on valid words. */
  Slot after(List<String> before) {
    if (before.isEmpty()) {
      return start;
    }
    return switch (before.get(0)) {
      case "everyone" -> Slot.last(before, 1, Slot.of("`leave`", List.of("leave")));
      case "muster" -> Slot.last(before, 1, place);
      case "belay" -> Slot.last(before, 1, who);
      case "read" -> Slot.last(before, 1, gauge);
      case "report" -> report(before);
      default -> told(before);
    };
  }

  private Slot report(List<String> before) {
    return switch (before.size()) {
      case 1 -> message;
      case 2 -> Slot.of("`to`", List.of("to"));
      case 3 -> who;
      default -> Slot.END;
    };
  }

  private Slot told(List<String> before) {
    if (before.size() == 1) {
      return verb;
    }
    return switch (before.get(1)) {
      case "go", "look" -> Slot.last(before, 2, place);
      case "read" -> Slot.last(before, 2, gauge);
      default -> work(before.get(1), before.subList(2, before.size()));
    };
  }

  private Slot work(String act, List<String> behind) {
    int from = behind.indexOf("from");
    int to = behind.indexOf("to");
    if (from >= 0) {
      return Slot.last(behind, from + 1, place);
    }
    if (to >= 0) {
      boolean isSet = behind.size() > to + 1;
      return new Slot("a setting", isSet ? List.of("from") : List.of(), true, isSet);
    }
    List<String> valid = fittings.getOrDefault(act, List.of());
    Slot fitting = Slot.of("a fitting to " + act, valid);
    if (behind.isEmpty()) {
      return fitting;
    }
    boolean isSetting = act.equals(Verb.SET.word());
    String next = isSetting ? "`to`, or another fitting" : "`from`, or another fitting";
    List<String> words = joined(List.of(isSetting ? "to" : "from"), valid);
    return new Slot(next, words, false, !isSetting);
  }
}
