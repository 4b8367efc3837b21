package handwheel.app;

import handwheel.drill.Engine;
import handwheel.drill.Session;
import handwheel.plant.Quantity;
import handwheel.ship.Gauge;
import handwheel.ship.Ship;
import java.io.PrintWriter;
import java.util.function.Consumer;

/**
 * Writes every gauge and every true value once a second, as comma-separated values: {@code
 * tick,seconds,gauge/ID UNIT,...,plant/ID UNIT,...}.
 */
final class Trace implements Consumer<Session> {
  private final PrintWriter out;
  private final Ship ship;

  Trace(Ship ship, PrintWriter out) {
    this.ship = ship;
    this.out = out;
    StringBuilder head = new StringBuilder("tick,seconds");
    for (Gauge g : ship.gauges()) {
      head.append(",gauge/").append(g.id()).append(' ').append(g.unit().symbol());
    }
    for (Quantity q : Quantity.values()) {
      head.append(",plant/").append(q.id()).append(' ').append(q.unit().symbol());
    }
    line(head);
  }

  @Override
  public void accept(Session session) {
    long done = session.now() - 1;
    if (done % Engine.TICKS_PER_S != 0) {
      return;
    }
    StringBuilder row = new StringBuilder().append(done).append(',');
    row.append(done / Engine.TICKS_PER_S);
    for (Gauge g : ship.gauges()) {
      row.append(',').append((float) session.sight().shown(g));
    }
    for (Quantity q : Quantity.values()) {
      row.append(',').append(session.truth(q));
    }
    line(row);
  }

  private void line(CharSequence text) {
    out.print(text);
    out.print('\n');
  }
}
