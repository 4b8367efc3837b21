package handwheel.scoring;

import handwheel.casualty.Casualty;
import handwheel.logbook.Entry;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;

/** Builds the entries of a run for tests. Orders must be said in order of time. */
final class Run {
  /** A place that is safe for ever. */
  private static final long SAFE = Entry.NO_HURT_TICKS;

  private final List<Timed> entries = new ArrayList<>();
  private int orders;

  private record Timed(long tick, Entry entry) {}

  Run add(long tick, Entry entry) {
    entries.add(new Timed(tick, entry));
    return this;
  }

  Run cue(long tick) {
    return add(tick, new Entry.CueGiven(tick, Script.CUE, true));
  }

  /** An order typed in half a second; returns its number. */
  int say(long tick, String text) {
    return say(tick, tick - 10, text);
  }

  int say(long tick, long from, String text) {
    return say(new Entry.OrderSaid(tick, from, orders + 1, text, 100, SAFE, false));
  }

  int say(Entry.OrderSaid said) {
    orders = said.n();
    add(said.t(), said);
    return orders;
  }

  /** The next order at a place with these times. */
  Entry.OrderSaid at(long tick, String text, long need, long hurt) {
    return new Entry.OrderSaid(tick, tick, orders + 1, text, need, hurt, false);
  }

  Run moved(long tick, int n, String fitting, int pos) {
    return moved(tick, n, fitting, TestShip.OUTSIDE, pos);
  }

  Run moved(long tick, int n, String fitting, String at, int pos) {
    return add(tick, new Entry.Moved(tick, n, "burnerman", fitting, at, pos));
  }

  /** Says an order to shut a fitting; it is shut a second later. */
  int shut(long tick, String fitting) {
    String verb = fitting.equals("trip") ? "trip" : fitting.equals("fan") ? "stop" : "shut";
    int n = say(tick, "burnerman " + verb + " " + fitting);
    moved(tick + 20, n, fitting, 0);
    return n;
  }

  int open(long tick, String fitting) {
    int n = say(tick, "burnerman open " + fitting);
    moved(tick + 20, n, fitting, 1000);
    return n;
  }

  /** Reads the burner line; the reading is heard at once. */
  Run read(long tick, long milliPsig) {
    int n = say(tick, "read burner-line");
    return add(tick, new Entry.Reading(tick, n, "supervisor", "burner-line", milliPsig));
  }

  Run report(long tick, String message) {
    int n = say(tick, "report " + message + " to watch-engineer");
    return add(tick, new Entry.Passed(tick, n, message, "watch-engineer"));
  }

  Run counted(long tick, String missing) {
    int n = say(tick, "muster " + TestShip.OUTSIDE);
    return add(tick, new Entry.Counted(tick, n, missing.isEmpty() ? 7 : 6, 7, missing));
  }

  Run refused(long tick, int n, boolean fault) {
    return add(tick, new Entry.Refused(tick, n, "burnerman", "", "It will not turn.", fault));
  }

  Run repeated(long tick, int n, String who, String say) {
    return add(tick, new Entry.Repeated(tick, n, who, say));
  }

  Run person(long tick, String who, String is) {
    return add(tick, new Entry.Person(tick, who, is, 310));
  }

  Run broke(long tick, int n, String never) {
    return add(tick, new Entry.Broke(tick, n, never, "a forbidden act", 41_500));
  }

  Run plant(long tick, String what) {
    return add(tick, new Entry.PlantEvent(tick, what));
  }

  /** The run went on until here. */
  Run until(long tick) {
    return add(tick, new Entry.State(tick, "00", new TreeMap<>()));
  }

  List<Entry> entries() {
    return entries.stream()
        .sorted(Comparator.comparingLong(Timed::tick))
        .map(Timed::entry)
        .toList();
  }

  ScoreSheet score(Casualty casualty) {
    return Scorer.score(casualty, TestShip.SHIP, entries());
  }

  ScoreSheet score(Script script) {
    return score(script.casualty());
  }
}
