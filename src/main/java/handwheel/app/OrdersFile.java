package handwheel.app;

import handwheel.drill.Engine;
import handwheel.drill.Input;
import handwheel.drill.Player;
import handwheel.logbook.Entry;
import handwheel.ship.OrderResult;
import handwheel.ship.OrderText;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Plays a file of orders: {@code SECONDS ORDER} a line, in order of time; empty lines and lines
 * that start with {@code #} are passed over.
 */
final class OrdersFile implements Player {
  private static final Pattern LINE = Pattern.compile("(\\d{1,6}(?:\\.\\d{1,2})?)\\s+(.*)");

  private final List<At> orders;
  private int next;

  private record At(long tick, Input input) {}

  private OrdersFile(List<At> orders) {
    this.orders = orders;
  }

  /**
   * Reads the file.
   *
   * @throws Usage if a line is not understood; says which and why
   */
  static OrdersFile of(String name, List<String> lines, OrderText reader) throws Usage {
    List<At> orders = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      String line = lines.get(i).strip();
      if (!line.isEmpty() && !line.startsWith("#")) {
        orders.add(at(name + ":" + (i + 1), line, reader, orders));
      }
    }
    return new OrdersFile(List.copyOf(orders));
  }

  private static At at(String where, String line, OrderText reader, List<At> before) throws Usage {
    Matcher m = LINE.matcher(line);
    if (!m.matches()) {
      throw new Usage(where + ": `" + line + "`: seconds and an order are needed.");
    }
    long tick = Engine.ticks(Double.parseDouble(m.group(1)));
    if (!before.isEmpty() && before.get(before.size() - 1).tick() > tick) {
      throw new Usage(where + ": earlier than the line before. Put the lines in order of time.");
    }
    OrderResult result = reader.read(m.group(2));
    if (result instanceof OrderResult.Understood u) {
      return new At(tick, new Input.Said(u.order(), tick));
    }
    OrderResult.NotUnderstood n = (OrderResult.NotUnderstood) result;
    int column = line.length() - m.group(2).length() + n.column();
    throw new Usage(where + ":" + column + ": " + n.message() + ". " + n.mend());
  }

  @Override
  public void note(Entry entry) {
    // A file does not listen.
  }

  @Override
  public List<Input> inputs(long now) {
    List<Input> due = new ArrayList<>();
    while (next < orders.size() && orders.get(next).tick() <= now) {
      due.add(orders.get(next).input());
      next++;
    }
    return due;
  }
}
