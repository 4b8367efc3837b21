package handwheel.proof;

import handwheel.casualty.Step;
import handwheel.drill.Engine;
import handwheel.ship.Control;
import handwheel.ship.Fitting;
import handwheel.ship.Order;
import handwheel.ship.Setting;
import handwheel.ship.Verb;
import handwheel.ship.Watchstander;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The wrong thing done: a sibling, another place, half of it; and a harmless look between. */
final class Wrongs {
  private static final int SIBLINGS = 2;
  private static final Setting HALF = new Setting("50 %");

  private final Base base;
  private final List<Mutant> mutants = new ArrayList<>();

  private Wrongs(Base base) {
    this.base = base;
  }

  static List<Mutant> of(Base base) {
    Wrongs wrongs = new Wrongs(base);
    for (int i = 0; i < base.orders(); i++) {
      Optional<Order> order = AlteredPlayer.read(base.reader(), base.say(i));
      if (order.orElse(null) instanceof Order.Work work && !base.served(i).isEmpty()) {
        wrongs.siblings(i, work);
        wrongs.places(i, work);
        wrongs.half(i, work);
      }
    }
    base.ship().watch().forEach(wrongs::glanced);
    return wrongs.mutants;
  }

  private void siblings(int at, Order.Work work) {
    Fitting right = base.ship().fitting(work.fittings().get(0)).orElseThrow();
    base.ship().fittings().stream()
        .filter(f -> !work.fittings().contains(f.id()))
        .filter(f -> f.acts().keySet().equals(right.acts().keySet()))
        .limit(SIBLINGS)
        .forEach(f -> instead("wrong fitting", at, Mutant.Expected.CHARGED, with(work, f.id())));
  }

  private static Order.Work with(Order.Work work, String fitting) {
    return new Order.Work(
        work.who(), work.verb(), List.of(fitting), work.setting(), Optional.empty());
  }

  private void places(int at, Order.Work work) {
    Fitting fitting = base.ship().fitting(work.fittings().get(0)).orElseThrow();
    for (Control control : fitting.controls()) {
      Order.Work there =
          new Order.Work(
              work.who(),
              work.verb(),
              work.fittings(),
              work.setting(),
              Optional.of(control.place()));
      if (!there.text().equals(work.text())) {
        instead("another place", at, Mutant.Expected.ANY, there);
      }
    }
  }

  private void half(int at, Order.Work work) {
    Fitting fitting = base.ship().fitting(work.fittings().get(0)).orElseThrow();
    boolean isTurned = work.verb() == Verb.SHUT;
    if (isTurned && !fitting.moves(Verb.SET).isEmpty() && base.servesFitting(at)) {
      Order.Work half =
          new Order.Work(work.who(), Verb.SET, work.fittings(), Optional.of(HALF), work.from());
      instead("half", at, Mutant.Expected.CHARGED, half);
    }
  }

  private void instead(String what, int at, Mutant.Expected expected, Order order) {
    String say = order.text();
    if (AlteredPlayer.read(base.reader(), say).isPresent()) {
      add(
          what + ": `" + say + "` for `" + base.say(at) + "`",
          at,
          expected,
          (i, meant) -> Slips.said(i == at ? say : meant));
    }
  }

  /** Before anything happens a man reads what stands before him. */
  private void glanced(Watchstander man) {
    base.ship().gauges().stream()
        .filter(g -> g.at().contains(man.at()))
        .findFirst()
        .map(g -> (Order) new Order.Read(Optional.of(man.id()), g.id()))
        .ifPresent(
            read -> {
              String name = "`" + read.text() + "` before all";
              Trial trial = base.preceded(name, Engine.TICKS_PER_S, read);
              mutants.add(new Mutant(name, Mutant.Expected.FREE, List.of(), base.spot(0), trial));
            });
  }

  private void add(String name, int at, Mutant.Expected expected, Alteration alteration) {
    List<String> acts = base.served(at).stream().map(Step::id).toList();
    mutants.add(new Mutant(name, expected, acts, base.spot(at), base.altered(name, alteration)));
  }
}
