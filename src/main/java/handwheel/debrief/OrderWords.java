package handwheel.debrief;

import handwheel.ship.Order;
import handwheel.ship.Setting;
import java.util.stream.Collectors;

/** What is to be done, as it is called across a fire room: the verb first, names and no ids. */
record OrderWords(Names names) implements Order.Visitor<String> {
  @Override
  public String work(Order.Work order) {
    String fittings =
        order.fittings().stream().map(names::fitting).collect(Collectors.joining(" and "));
    String to = order.setting().map(Setting::text).map(s -> " to " + s).orElse("");
    String from = order.from().map(names::place).map(p -> " from " + p).orElse("");
    return order.verb().word() + " " + fittings + to + from;
  }

  @Override
  public String go(Order.Go order) {
    return "go to " + names.place(order.place());
  }

  @Override
  public String look(Order.Look order) {
    return "go and look, " + names.place(order.place());
  }

  @Override
  public String read(Order.Read order) {
    return "read " + names.gauge(order.gauge());
  }

  /** A report on a line that others hear too begins with the word drill. */
  @Override
  public String report(Order.Report order) {
    return message(order.message());
  }

  @Override
  public String everyoneLeave(Order.EveryoneLeave order) {
    return "leave";
  }

  @Override
  public String muster(Order.Muster order) {
    return "muster at " + names.place(order.place());
  }

  @Override
  public String belay(Order.Belay order) {
    return "belay that";
  }

  static String message(String id) {
    return "drill, " + id.replace('-', ' ');
  }
}
