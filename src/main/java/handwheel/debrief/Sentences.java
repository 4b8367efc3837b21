package handwheel.debrief;

import handwheel.drill.Engine;
import handwheel.logbook.Entry;
import handwheel.ship.Fitting;
import handwheel.ship.Gauge;
import handwheel.ship.Place;
import handwheel.ship.Ship;
import handwheel.ship.Watchstander;
import handwheel.units.Measure;
import java.util.Optional;

/**
 * What an entry is in words: one sentence for people, the same on every screen, in the line mode
 * and in the debrief. A wrong repeat-back stands as it was said: to catch it is the trainee's part.
 */
public final class Sentences {
  private final Scripts.Found found;
  private final Cues cues;

  /**
   * Makes the words for a script.
   *
   * @param found the script and its ship
   */
  public Sentences(Scripts.Found found) {
    this.found = found;
    this.cues = new Cues(found.casualty());
  }

  /**
   * Prints a tick as minutes and seconds.
   *
   * @param tick ticks since the start
   * @return such as {@code 1:05}
   */
  public static String clock(long tick) {
    long seconds = tick / Engine.TICKS_PER_S;
    long rest = seconds % 60;
    return seconds / 60 + ":" + (rest < 10 ? "0" : "") + rest;
  }

  /**
   * Says what the trainee hears, sees or has said.
   *
   * @param entry the entry
   * @return a sentence; empty for what reaches nobody's ears or eyes
   */
  public Optional<String> heard(Entry entry) {
    if (entry instanceof Entry.OrderSaid o) {
      return Optional.of("You: " + o.say() + ".");
    }
    if (entry instanceof Entry.CueGiven c) {
      return c.noticed() ? Optional.of(cues.text(c.id())) : Optional.empty();
    }
    if (entry instanceof Entry.Counted c) {
      return Optional.of(counted(c));
    }
    if (entry instanceof Entry.Person p) {
      return Optional.of(title(p.who()) + " " + person(p.is()) + ".");
    }
    if (entry instanceof Entry.Passed p) {
      return Optional.of(title(p.to()) + ": heard, " + p.message() + ".");
    }
    return spoken(entry);
  }

  private Optional<String> spoken(Entry entry) {
    if (entry instanceof Entry.Repeated r) {
      return Optional.of(says(r.who(), r.say() + ", aye."));
    }
    if (entry instanceof Entry.Refused r) {
      return Optional.of(says(r.who(), r.why()));
    }
    if (entry instanceof Entry.Moved m && m.n() > 0) {
      return Optional.of(says(m.who(), fitting(m.fitting()) + " " + position(m) + "."));
    }
    if (entry instanceof Entry.Arrived a) {
      return Optional.of(says(a.who(), "at the " + place(a.place()) + "."));
    }
    if (entry instanceof Entry.Reading r) {
      return Optional.of(says(r.who(), reading(r)));
    }
    if (entry instanceof Entry.Looked l) {
      return Optional.of(says(l.who(), place(l.place()) + ": " + l.say()));
    }
    return Optional.empty();
  }

  /**
   * Says everything that happened, also what the trainee could not know.
   *
   * @param entry the entry
   * @return a sentence; empty for a mere sample or the frame of the record
   */
  public Optional<String> told(Entry entry) {
    if (entry instanceof Entry.Began b) {
      return Optional.of(title(b.who()) + " has his hand on " + fitting(b.fitting()) + ".");
    }
    if (entry instanceof Entry.CueGiven c) {
      String unnoticed = c.noticed() ? "" : " (not to be noticed where you stood)";
      return Optional.of("Cue: " + cues.text(c.id()) + unnoticed);
    }
    if (entry instanceof Entry.PhaseEntered p) {
      return Optional.of("The casualty: " + p.id() + ".");
    }
    if (entry instanceof Entry.PlantEvent p) {
      return Optional.of("Plant: " + p.what() + ".");
    }
    if (entry instanceof Entry.Broke b) {
      return Optional.of("FORBIDDEN (" + b.never() + "): " + b.what() + ".");
    }
    if (entry instanceof Entry.Ended e) {
      return Optional.of("The drill was ended: " + e.why() + ".");
    }
    return heard(entry);
  }

  private String says(String who, String what) {
    return who.equals(Ship.SUPERVISOR) ? "You: " + what : title(who) + ": " + what;
  }

  private static String person(String is) {
    return switch (is) {
      case "hurt" -> "is hurt";
      case "down" -> "is down";
      default -> "leaves by himself";
    };
  }

  private String counted(Entry.Counted c) {
    String head = "Count: " + c.present() + " of " + c.of();
    return c.missing().isEmpty()
        ? head + ", all accounted for."
        : head + ". Missing: " + c.missing().replace(" ", ", ") + ".";
  }

  private String position(Entry.Moved m) {
    return m.pos() <= 0 ? "shut" : m.pos() >= 1000 ? "open" : "at " + m.pos() / 10 + " %";
  }

  private String reading(Entry.Reading r) {
    Gauge gauge = found.ship().gauge(r.gauge()).orElseThrow();
    return gauge.name() + " " + new Measure(r.milli() / 1000.0, gauge.unit()).text() + ".";
  }

  /**
   * Returns what people call a watchstander.
   *
   * @param who station id
   * @return his title; the id if there is none
   */
  public String title(String who) {
    String title = found.ship().watchstander(who).map(Watchstander::title).orElse(who);
    return Character.toUpperCase(title.charAt(0)) + title.substring(1);
  }

  private String place(String id) {
    return found.ship().place(id).map(Place::name).orElse(id);
  }

  private String fitting(String id) {
    return found.ship().fitting(id).map(Fitting::name).orElse(id);
  }
}
