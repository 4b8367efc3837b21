package handwheel.proof;

import handwheel.casualty.Never;
import handwheel.drill.Engine;
import handwheel.ship.Control;
import handwheel.ship.Fitting;
import handwheel.ship.Order;
import handwheel.ship.Ship;
import handwheel.ship.Verb;
import handwheel.ship.Watchstander;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Orders that break a forbidden act, thrown in at several moments by several people. */
final class Harms {
  private static final List<Verb> OPENING = List.of(Verb.OPEN, Verb.RESET, Verb.START, Verb.LIGHT);
  private static final List<Verb> SHUTTING = List.of(Verb.SHUT, Verb.TRIP, Verb.STOP, Verb.SECURE);
  private static final int PEOPLE = 3;
  private static final long SOON_TICKS = Engine.TICKS_PER_S / 2;
  private static final long SETTLED_TICKS = 60L * Engine.TICKS_PER_S;

  private final Base base;

  private Harms(Base base) {
    this.base = base;
  }

  /** Returns what may break some rules; one of the mutants of a rule has to. */
  static List<Mutant> of(Base base, List<Never> nevers) {
    Harms harms = new Harms(base);
    List<Mutant> mutants = new ArrayList<>();
    for (Never never : nevers) {
      if (never.act() instanceof Never.Moving moving) {
        harms.moves(moving).forEach(say -> harms.thrown(never, say, mutants));
      } else if (never.act() instanceof Never.Sending sending) {
        harms.sent(never, sending, mutants);
      }
    }
    return mutants;
  }

  /** Sends two people behind each order of the witness, in turn. */
  private void sent(Never never, Never.Sending sending, List<Mutant> mutants) {
    List<String> people =
        base.ship().watch().stream()
            .map(Watchstander::id)
            .filter(w -> sending.who().equals(w) || sending.who().equals("anyone"))
            .filter(w -> !w.equals(Ship.SUPERVISOR))
            .toList();
    String place = sending.places().get(0);
    for (int i = 0; i < 2 * base.orders() && !people.isEmpty(); i++) {
      String say = new Order.Go(people.get(i % people.size()), place).text();
      behind(never, say, i / 2, SOON_TICKS, mutants);
    }
  }

  private List<String> moves(Never.Moving moving) {
    return base.ship()
        .fitting(moving.fitting())
        .map(f -> moves(f, moving.isOpening()))
        .orElse(List.of());
  }

  private List<String> moves(Fitting fitting, boolean isOpening) {
    Optional<Verb> verb =
        (isOpening ? OPENING : SHUTTING)
            .stream().filter(v -> !fitting.moves(v).isEmpty()).findFirst();
    List<String> orders = new ArrayList<>();
    for (Control control : fitting.controls()) {
      base.ship().watch().stream()
          .filter(w -> isNear(w, control))
          .limit(PEOPLE)
          .forEach(w -> verb.ifPresent(v -> orders.add(order(w, v, fitting, control))));
    }
    return orders;
  }

  /** Of the people of his side of the bulkhead. */
  private boolean isNear(Watchstander man, Control control) {
    boolean isSupervisor = man.id().equals(Ship.SUPERVISOR);
    return !isSupervisor
        && (man.at().equals(control.place()) || zone(man.at()).equals(zone(control.place())));
  }

  private String zone(String place) {
    return base.ship().place(place).map(p -> p.zone().name()).orElse("");
  }

  private static String order(Watchstander man, Verb verb, Fitting fitting, Control control) {
    return new Order.Work(
            man.id(), verb, List.of(fitting.id()), Optional.empty(), Optional.of(control.place()))
        .text();
  }

  /** Throws an order in before the first of the witness, right behind it, and after the last. */
  private void thrown(Never never, String say, List<Mutant> mutants) {
    Optional<Order> order = AlteredPlayer.read(base.reader(), say);
    String early = "before all: `" + say + "`";
    order.ifPresent(o -> add(never, early, mutants, base.preceded(early, Engine.TICKS_PER_S, o)));
    behind(never, say, 0, SOON_TICKS, mutants);
    behind(never, say, base.orders() - 1, SETTLED_TICKS, mutants);
  }

  private void behind(Never never, String say, int at, long later, List<Mutant> mutants) {
    String name = "behind `" + base.say(at) + "`: `" + say + "`";
    Alteration alteration =
        (i, s) ->
            i == at
                ? List.of(new Alteration.Saying(0, s), new Alteration.Saying(later, say))
                : Slips.said(s);
    add(never, name, mutants, base.altered(name, alteration));
  }

  private static void add(Never never, String name, List<Mutant> mutants, Trial trial) {
    mutants.add(
        new Mutant(name, Mutant.Expected.ANY, List.of(never.id()), never.grade().spot(), trial));
  }
}
