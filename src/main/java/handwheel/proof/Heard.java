package handwheel.proof;

import handwheel.casualty.Bound;
import handwheel.casualty.Upon;
import handwheel.logbook.Entry;
import handwheel.ship.Gauge;
import handwheel.ship.Ship;
import handwheel.units.Measure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a player has heard, seen and said so far, as a trainee would have. */
final class Heard {
  /** A man says that it is done this long after it is done. */
  private static final long REPORT_TICKS = 20;

  private final Ship ship;
  private final List<Entry> entries = new ArrayList<>();

  Heard(Ship ship) {
    this.ship = ship;
  }

  void note(Entry entry) {
    entries.add(entry);
  }

  /** Returns what was said, if a repeat-back differs from it. */
  Optional<String> wrongly(Entry.Repeated repeated) {
    for (Entry e : entries) {
      if (e instanceof Entry.OrderSaid o && o.n() == repeated.n()) {
        return o.say().equals(repeated.say()) ? Optional.empty() : Optional.of(o.say());
      }
    }
    return Optional.empty();
  }

  /** Returns the tick at which what a line waits for was noticed first. */
  Optional<Long> tickOf(Upon upon) {
    return entries.stream().flatMap(e -> noticed(upon, e).stream()).findFirst();
  }

  /** Returns the tick at which an entry lets a player notice what a line waits for. */
  Optional<Long> noticed(Upon upon, Entry entry) {
    if (upon instanceof Upon.CueNoticed c && entry instanceof Entry.CueGiven g) {
      return when(g.noticed() && g.id().equals(c.cue()), g.t());
    }
    if (upon instanceof Upon.Done d && entry instanceof Entry.Moved m) {
      return when(m.fitting().equals(d.fitting()), m.t() + REPORT_TICKS);
    }
    if (upon instanceof Upon.Refused r && entry instanceof Entry.Refused f) {
      return when(f.fitting().equals(r.fitting()), f.t());
    }
    if (upon instanceof Upon.ReadingIs r && entry instanceof Entry.Reading g) {
      return when(g.gauge().equals(r.gauge()) && keeps(r.bound(), g), g.t());
    }
    if (upon instanceof Upon.Arrived a && entry instanceof Entry.Arrived g) {
      return when(g.who().equals(a.who()) && g.place().equals(a.place()), g.t());
    }
    if (upon instanceof Upon.Counted && entry instanceof Entry.Counted c) {
      return when(c.missing().isEmpty(), c.t());
    }
    if (upon instanceof Upon.Passed p && entry instanceof Entry.Passed g) {
      return when(g.message().equals(p.message()), g.t());
    }
    return Optional.empty();
  }

  private static Optional<Long> when(boolean is, long tick) {
    return is ? Optional.of(tick) : Optional.empty();
  }

  private boolean keeps(Bound bound, Entry.Reading reading) {
    Gauge gauge = ship.gauge(reading.gauge()).orElseThrow();
    Measure shown = new Measure(reading.milli() / 1000.0, gauge.unit());
    return bound.holds(gauge.of().si(shown).orElseThrow());
  }
}
