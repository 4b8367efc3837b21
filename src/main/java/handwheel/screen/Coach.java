package handwheel.screen;

import handwheel.casualty.Casualty;
import handwheel.drill.Input;
import handwheel.drill.Player;
import handwheel.logbook.Entry;
import handwheel.ship.Order;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Knows the next step of the drill: what somebody who does it right would say now and the trainee
 * has not said yet. It hears what he hears and looks no deeper. Only for modes that do not count.
 */
final class Coach {
  private final Hazards hazards;
  private final Player guide;
  private final List<Order> open = new ArrayList<>();
  private final List<Order> said = new ArrayList<>();

  /**
   * Makes a coach.
   *
   * @param casualty whose steps have reasons and cautions
   * @param guide a player that does it right; it is told every entry of the run
   */
  Coach(Casualty casualty, Player guide) {
    this.hazards = new Hazards(casualty);
    this.guide = guide;
  }

  /** Takes note of an entry. */
  void note(Entry entry) {
    guide.note(entry);
  }

  /** Takes note of an order of the trainee. */
  void said(Order order) {
    said.add(order);
    open.removeIf(o -> Alike.are(o, order));
  }

  /** Returns what to say now; empty if there is nothing to do but to watch. */
  Optional<Advice> next(long now) {
    for (Input input : guide.inputs(now)) {
      if (input instanceof Input.Said s && said.stream().noneMatch(o -> Alike.are(s.order(), o))) {
        open.add(s.order());
      }
    }
    return open.isEmpty() ? Optional.empty() : Optional.of(advice(open.get(0)));
  }

  private Advice advice(Order order) {
    String why = hazards.steps(order).stream().map(s -> s.grade().why()).findFirst().orElse("");
    return new Advice(order.text(), why, hazards.before(order));
  }
}
