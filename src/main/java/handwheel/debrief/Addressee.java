package handwheel.debrief;

import handwheel.ship.Order;
import handwheel.ship.Ship;

/** Whom an order is said to, in words behind "You"; the trainee's own acts are said to nobody. */
record Addressee(Names names) implements Order.Visitor<String> {
  private static final String EVERYONE = " to everyone";

  private String to(String who) {
    return who.equals(Ship.SUPERVISOR) ? "" : " to " + names.title(who);
  }

  @Override
  public String work(Order.Work order) {
    return to(order.who());
  }

  @Override
  public String go(Order.Go order) {
    return to(order.who());
  }

  @Override
  public String look(Order.Look order) {
    return to(order.who());
  }

  @Override
  public String read(Order.Read order) {
    return to(order.who().orElse(Ship.SUPERVISOR));
  }

  @Override
  public String report(Order.Report order) {
    return to(order.to());
  }

  @Override
  public String everyoneLeave(Order.EveryoneLeave order) {
    return EVERYONE;
  }

  @Override
  public String muster(Order.Muster order) {
    return EVERYONE;
  }

  @Override
  public String belay(Order.Belay order) {
    return to(order.who());
  }
}
