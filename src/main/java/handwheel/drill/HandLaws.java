package handwheel.drill;

import handwheel.casualty.CrewState;
import handwheel.plant.StateWalker;
import handwheel.ship.Fitting;
import handwheel.ship.Order;
import java.util.List;

final class HandLaws implements Holding {
  HandLaws(Scene scene, List<Person> people, CrewState state) {}

  @Override
  public boolean hold(Person person, Order.Work order) {
    return false;
  }

  @Override
  public void handTaken(Fitting fitting) {}

  @Override
  public void tick() {}

  @Override
  public void walk(StateWalker walker) {}
}
