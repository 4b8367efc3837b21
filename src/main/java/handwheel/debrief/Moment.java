package handwheel.debrief;

import handwheel.logbook.Entry;
import handwheel.ship.Gauge;
import handwheel.ship.Ship;
import handwheel.units.Measure;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Twenty seconds of a run again: cues that reached the trainee, what was said, and the gauges
 * before his eyes. What a roar drowned is among what was said: a record does not tell who heard it.
 */
public final class Moment {
  private static final long HALF_TICKS = 200;
  private static final long GAUGE_TICKS = 100;
  private static final int WIDTH = 80;

  private final Scripts.Found found;
  private final List<Entry> entries;
  private final Times times;
  private final SortedMap<String, Long> shown = new TreeMap<>();
  private final SortedMap<String, String> told = new TreeMap<>();
  private String place;
  private long nextGaugesTick;

  private Moment(Scripts.Found found, List<Entry> entries) {
    this.found = found;
    this.entries = List.copyOf(entries);
    this.times = Times.of(entries);
    this.place = found.ship().watchstander(Ship.SUPERVISOR).orElseThrow().at();
  }

  /**
   * Tells ten seconds on each side of an instant.
   *
   * @param entries entries of the record
   * @param found its ship and script
   * @param seconds from the first cue
   * @return lines of at most 80 characters
   */
  public static List<String> around(List<Entry> entries, Scripts.Found found, double seconds) {
    Moment moment = new Moment(found, entries);
    return moment.lines(moment.times.zeroTick() + Times.ticks(seconds));
  }

  private List<String> lines(long tick) {
    List<String> lines = new ArrayList<>();
    Sentences sentences = new Sentences(found);
    lines.add("DRILL - those 20 seconds again; times from the first cue");
    lines.add("What was shown where you stood and what was said, heard through the roar or not.");
    for (Entry e : entries) {
      boolean isNear = Math.abs(e.t() - tick) <= HALF_TICKS && isOfTheRun(e);
      follow(e);
      String heard = sentences.heard(e).orElse("");
      if (isNear && !heard.isEmpty()) {
        add(lines, e.t(), heard);
      } else if (isNear && e instanceof Entry.State && e.t() >= nextGaugesTick) {
        add(lines, e.t(), gauges());
        nextGaugesTick = e.t() + GAUGE_TICKS;
      }
    }
    lines.add("What would you order now? Say it aloud, then look at the debrief.");
    return lines;
  }

  private static boolean isOfTheRun(Entry e) {
    return !(e instanceof Entry.Score || e instanceof Entry.Run);
  }

  private void follow(Entry e) {
    if (e instanceof Entry.State s) {
      shown.putAll(s.gauge());
    } else if (e instanceof Entry.Arrived a && a.who().equals(Ship.SUPERVISOR)) {
      place = a.place();
    }
  }

  /** The gauges before the trainee's eyes whose figures are new. */
  private String gauges() {
    List<String> texts = new ArrayList<>();
    for (Gauge g : found.ship().gauges()) {
      boolean isBeforeHisEyes = g.at().contains(place) && shown.containsKey(g.id());
      String reading = isBeforeHisEyes ? reading(g) : "";
      if (isBeforeHisEyes && !reading.equals(told.put(g.id(), reading))) {
        texts.add(reading);
      }
    }
    return texts.isEmpty()
        ? "[no new reading where you stand]"
        : "[" + String.join(", ", texts) + "]";
  }

  private String reading(Gauge g) {
    Long milli = shown.get(g.id());
    double figure = milli == null ? 0 : milli / 1000.0;
    return g.name() + " " + new Measure(figure, g.unit()).text();
  }

  private void add(List<String> lines, long tick, String text) {
    String before = Wrap.right(times.at(tick), 6) + "  ";
    for (String row : Wrap.rows(text, WIDTH - before.length())) {
      lines.add(before + row);
      before = " ".repeat(before.length());
    }
  }
}
