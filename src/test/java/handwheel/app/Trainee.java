package handwheel.app;

import handwheel.drill.Input;
import handwheel.drill.Player;
import handwheel.logbook.Entry;
import handwheel.ship.Order;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Says a right run's orders with slips of his own, by seeded chance. */
final class Trainee implements Player {
  private final List<Due> due = new ArrayList<>();

  /** An order and when it is said. */
  record Due(long tick, Order order) {}

  /**
   * How well somebody does, as how often he slips.
   *
   * @param omits chance that an order is left out
   * @param meanDelayS mean of what he is late with each order, s
   * @param skipsProof further chance that a reading is left out
   * @param swaps chance that an order changes places with the next
   */
  record Skill(double omits, double meanDelayS, double skipsProof, double swaps) {}

  Trainee(List<Due> right, Skill skill, Random random) {
    List<Order> orders = new ArrayList<>(right.stream().map(Due::order).toList());
    for (int i = 0; i + 1 < orders.size(); i++) {
      if (random.nextDouble() < skill.swaps()) {
        orders.add(i + 1, orders.remove(i));
      }
    }
    for (int i = 0; i < orders.size(); i++) {
      long late = Math.round(-StrictMath.log(1 - random.nextDouble()) * skill.meanDelayS() * 20);
      boolean isProof = orders.get(i).text().contains("read ");
      double omitted = skill.omits() + (isProof ? skill.skipsProof() : 0);
      if (random.nextDouble() >= omitted) {
        due.add(new Due(right.get(i).tick() + late, orders.get(i)));
      }
    }
  }

  @Override
  public void note(Entry entry) {}

  @Override
  public List<Input> inputs(long now) {
    List<Input> said = new ArrayList<>();
    for (Due d : due) {
      if (d.tick() == now) {
        said.add(new Input.Said(d.order(), now));
      }
    }
    return said;
  }
}
