package handwheel.debrief;

import handwheel.casualty.OutcomeRule;
import handwheel.drill.Engine;
import handwheel.logbook.Entry;
import handwheel.ship.Fitting;
import handwheel.ship.Gauge;
import handwheel.ship.Order;
import handwheel.ship.OrderResult;
import handwheel.ship.OrderText;
import handwheel.ship.Ship;
import handwheel.ship.Verb;
import handwheel.units.Measure;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * What an entry is in words: one sentence for people, the same on every screen, in the line mode
 * and in the debrief. A wrong repeat-back stands as it was said: to catch it is the trainee's part.
 *
 * <p>The entries of one run are given in their order, because what a hand did is told by the verb
 * of the order it was for.
 */
public final class Sentences {
  private final Ship ship;
  private final Cues cues;
  private final List<String> outcomes;
  private final Names names;
  private final OrderText orders;
  private final SortedMap<Integer, Verb> verbs = new TreeMap<>();

  /**
   * Makes the words for one run of a script.
   *
   * @param found the script and its ship
   */
  public Sentences(Scripts.Found found) {
    this.ship = found.ship();
    this.cues = new Cues(found.casualty());
    this.names = new Names(ship);
    this.outcomes = found.casualty().outcomes().stream().map(OutcomeRule::id).toList();
    this.orders = new OrderText(ship, found.casualty().messages());
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
   * Says what an entry is for the ears and eyes it reaches.
   *
   * @param entry the entry
   * @return a sentence; empty for what reaches nobody's ears or eyes
   */
  public Optional<String> heard(Entry entry) {
    if (entry instanceof Entry.OrderSaid o) {
      return Optional.of(said(o));
    }
    if (entry instanceof Entry.CueGiven c) {
      return c.noticed() ? Optional.of(cues.text(c.id())) : Optional.empty();
    }
    if (entry instanceof Entry.Counted c) {
      return Optional.of(counted(c));
    }
    if (entry instanceof Entry.Person p) {
      return Optional.of(person(p));
    }
    if (entry instanceof Entry.Passed p) {
      return Optional.of(says(p.to(), OrderWords.message(p.message()) + ", aye."));
    }
    return spoken(entry).or(() -> ownDoing(entry));
  }

  private Optional<String> spoken(Entry entry) {
    if (entry instanceof Entry.Repeated r) {
      return Optional.of(says(r.who(), words(r.say()) + ", aye."));
    }
    if (entry instanceof Entry.Refused r) {
      return Optional.of(refused(r));
    }
    if (entry instanceof Entry.Moved m) {
      return Optional.of(moved(m));
    }
    if (entry instanceof Entry.Arrived a) {
      String be = a.who().equals(Ship.SUPERVISOR) ? "You are at " : title(a.who()) + ": at ";
      return Optional.of(be + names.place(a.place()) + ".");
    }
    if (entry instanceof Entry.Reading r) {
      return Optional.of(says(r.who(), reading(r)));
    }
    if (entry instanceof Entry.Looked l) {
      return Optional.of(says(l.who(), names.place(l.place()) + ": " + l.say()));
    }
    return Optional.empty();
  }

  private static Optional<String> ownDoing(Entry entry) {
    if (entry instanceof Entry.Acknowledged) {
      return Optional.of("You: heard.");
    }
    if (entry instanceof Entry.Stopped) {
      return Optional.of("The drill is stopped.");
    }
    if (entry instanceof Entry.Resumed) {
      return Optional.of("The drill goes on.");
    }
    return entry instanceof Entry.Ended e
        ? Optional.of("The drill is ended: " + e.why() + ".")
        : Optional.empty();
  }

  /**
   * Says everything that happened, also what the trainee could not know.
   *
   * @param entry the entry
   * @return a sentence; empty for a mere sample or the frame of the record
   */
  public Optional<String> told(Entry entry) {
    if (entry instanceof Entry.Began b) {
      return Optional.of(title(b.who()) + " has his hand on " + names.fitting(b.fitting()) + ".");
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
      return Optional.of(
          outcomes.contains(b.never())
              ? "IT CAME TO THIS: " + b.what() + "."
              : "FORBIDDEN (" + b.never() + "): " + b.what() + ".");
    }
    return heard(entry);
  }

  private Optional<Order> order(String text) {
    return orders.read(text) instanceof OrderResult.Understood u
        ? Optional.of(u.order())
        : Optional.empty();
  }

  /** Returns an order's text in words; a text that is no order stands as it is. */
  private String words(String text) {
    return order(text).map(o -> o.accept(new OrderWords(names))).orElse(text);
  }

  private String said(Entry.OrderSaid said) {
    Optional<Order> order = order(said.say());
    if (order.isPresent() && order.get() instanceof Order.Work w) {
      verbs.put(said.n(), w.verb());
    }
    String to = order.map(o -> o.accept(new Addressee(names))).orElse("");
    return "You" + to + ": " + words(said.say()) + ".";
  }

  private String says(String who, String what) {
    return title(who) + ": " + what;
  }

  private String refused(Entry.Refused r) {
    return r.why().equals("No answer.")
        ? "No answer from " + names.title(r.who()) + "."
        : says(r.who(), r.why());
  }

  private String moved(Entry.Moved m) {
    Optional<Fitting> fitting = ship.fitting(m.fitting());
    Verb verb = verbs.get(m.n());
    String done =
        verb == null || fitting.isEmpty()
            ? fitting.map(f -> DoneWords.of(f, m.pos())).orElse("moved")
            : DoneWords.of(fitting.get(), verb, m.pos());
    return says(m.who(), names.fitting(m.fitting()) + " " + done + ".");
  }

  private String person(Entry.Person p) {
    boolean isTrainee = p.who().equals(Ship.SUPERVISOR);
    String whose = isTrainee ? "You" : title(p.who());
    return switch (p.is()) {
      case "hurt" -> whose + (isTrainee ? " are hurt." : " is hurt.");
      case "down" -> whose + (isTrainee ? " are down." : " is down.");
      default -> whose + (isTrainee ? " leave." : " leaves by himself.");
    };
  }

  private String counted(Entry.Counted c) {
    String head = "Count: " + c.present() + " of " + c.of();
    String missing =
        Arrays.stream(c.missing().split(" ", -1))
            .map(names::title)
            .collect(Collectors.joining(", "));
    return c.missing().isEmpty()
        ? head + ", all accounted for."
        : head + ". Missing: " + missing + ".";
  }

  private String reading(Entry.Reading r) {
    String name = names.gauge(r.gauge());
    Optional<Gauge> gauge = ship.gauge(r.gauge());
    String figure =
        gauge.map(g -> new Measure(r.milli() / 1000.0, g.unit()).text()).orElse("cannot be read");
    return name + " " + figure + ".";
  }

  /**
   * Returns what people call a watchstander, as a sentence begins.
   *
   * @param who station id
   * @return his title, or "You" for the trainee; the id if there is none
   */
  public String title(String who) {
    return who.equals(Ship.SUPERVISOR) ? "You" : Names.capital(names.title(who));
  }
}
