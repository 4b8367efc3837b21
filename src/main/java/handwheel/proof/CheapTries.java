package handwheel.proof;

import handwheel.casualty.Step;
import handwheel.drill.Engine;
import handwheel.drill.SplitMix64;
import handwheel.ship.Order;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Short and lazy lists of orders: some of the witness's, without those that serve one critical
 * step, in any sequence, said on and on from the first cue. None of them may pass.
 */
final class CheapTries {
  private static final int SHORTEST_GAP_TICKS = Engine.TICKS_PER_S / 2;
  private static final int LONGEST_GAP_TICKS = 20 * Engine.TICKS_PER_S;

  private final Base base;
  private final List<Step> critical;
  private final SplitMix64 stream;

  private CheapTries(Base base) {
    this.base = base;
    this.critical =
        base.casualty().response().stream()
            .filter(s -> s.grade().isCritical() && base.serving(s.id()).isPresent())
            .toList();
    this.stream = SplitMix64.of(base.seed(), "cheap tries");
  }

  /** Returns so many lists, each about the critical step it leaves out; none without such steps. */
  static List<Mutant> of(Base base, int tries) {
    CheapTries cheap = new CheapTries(base);
    List<Mutant> mutants = new ArrayList<>();
    for (int i = 0; i < tries && !cheap.critical.isEmpty(); i++) {
      mutants.add(cheap.next());
    }
    return mutants;
  }

  private Mutant next() {
    Step missing = critical.get(below(critical.size()));
    List<Order> orders = new ArrayList<>();
    for (int i = 0; i < base.orders(); i++) {
      boolean isTaken = stream.nextDouble() < 0.8;
      if (isTaken && !isFor(missing, i)) {
        Optional<Order> order = AlteredPlayer.read(base.reader(), base.say(i));
        int at = stream.nextDouble() < 0.5 ? orders.size() : below(orders.size() + 1);
        order.ifPresent(o -> orders.add(at, o));
      }
    }
    List<ListPlayer.Timed> timed = timed(orders);
    String name = orders.size() + " orders without step `" + missing.id() + "`";
    return new Mutant(
        name,
        Mutant.Expected.ANY,
        List.of(missing.id()),
        missing.grade().spot(),
        new Trial(name, base.seed(), () -> new ListPlayer(timed)));
  }

  /** Said twice it counts once. */
  private boolean isFor(Step step, int index) {
    return base.serving(step.id()).filter(s -> base.say(s).equals(base.say(index))).isPresent()
        || base.served(index).contains(step);
  }

  private List<ListPlayer.Timed> timed(List<Order> orders) {
    long tick = base.run().orders().get(0).t();
    List<ListPlayer.Timed> timed = new ArrayList<>();
    for (Order order : orders) {
      timed.add(new ListPlayer.Timed(tick, order));
      tick += SHORTEST_GAP_TICKS + below(LONGEST_GAP_TICKS);
    }
    return timed;
  }

  private int below(int end) {
    return (int) (stream.nextDouble() * end);
  }
}
