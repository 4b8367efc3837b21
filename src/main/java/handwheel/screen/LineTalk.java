package handwheel.screen;

import handwheel.debrief.Sentences;
import handwheel.drill.Engine;
import handwheel.drill.Input;
import handwheel.logbook.Entry;
import handwheel.ship.Order;
import java.util.ArrayList;
import java.util.List;

/** The talk of a drill that runs in the line mode: what is typed, and what is said in answer. */
final class LineTalk {
  private static final long MINUTE_TICKS = 60L * Engine.TICKS_PER_S;

  private final Expander expander;
  private final Watch watch;
  private final Changes changes = new Changes();
  private final List<String> heard = new ArrayList<>();
  private Hearing hearing = Hearing.NOTHING;
  private boolean isReal;

  LineTalk(Script script, Expander expander) {
    this.expander = expander;
    this.watch = new Watch(script, this::hear);
  }

  private void hear(Entry entry, String sentence) {
    hearing = hearing.with(entry, sentence);
    heard.add(Sentences.clock(entry.t()) + " " + sentence);
  }

  Watch watch() {
    return watch;
  }

  /** Returns whether the trainee has left for a real casualty. */
  boolean isReal() {
    return isReal;
  }

  /** Says what was heard since the last time, and once a second what has changed to see. */
  void report(Out out) {
    heard.forEach(out::line);
    heard.clear();
    if (watch.isStopped() || watch.isOver()) {
      return;
    }
    if (watch.now() % MINUTE_TICKS == 0 && watch.now() > 0) {
      out.line("DRILL " + Sentences.clock(watch.now()));
    }
    if (watch.now() % Engine.TICKS_PER_S == 0) {
      changes.in(watch.sighting()).forEach(out::line);
    }
  }

  /** Does what was typed. */
  void typed(String line, long firstKeyTick, Out out) {
    if (line.equals("!!!") || (watch.isStopped() && line.startsWith("!"))) {
      isReal = true;
    } else if (watch.isStopped()) {
      stopped(line, out);
    } else {
      running(line, firstKeyTick, out);
    }
  }

  private void stopped(String line, Out out) {
    if (line.isEmpty() || line.equals("ok")) {
      watch.resume();
    } else {
      sayStopped(out);
    }
  }

  /** Stops the drill. */
  void stop(Out out) {
    watch.offer(new Input.Stopped());
    report(out);
    sayStopped(out);
  }

  private static void sayStopped(Out out) {
    out.line("DRILL STOPPED. Empty line or ok: it goes on. !: a real casualty, leave.");
  }

  private void running(String line, long firstKeyTick, Out out) {
    switch (line) {
      case "", "ok" -> {}
      case "?" -> Paper.lineHelp(expander).forEach(out::line);
      case "g" -> gauges(out);
      case "who" -> people(out);
      case "=" -> watch.offer(new Input.Acknowledged());
      case "n" -> wrong(out);
      case "!!" -> stop(out);
      default -> order(line, firstKeyTick, out);
    }
  }

  private void order(String line, long firstKeyTick, Out out) {
    Expansion expansion = expander.expand(line);
    if (!expansion.isComplete()) {
      out.line(expansion.full() + ": " + expansion.message());
      return;
    }
    expansion.orders().forEach(o -> give(o, firstKeyTick));
  }

  private void give(Order order, long firstKeyTick) {
    watch.offer(new Input.Said(order, Math.min(firstKeyTick, watch.now())));
  }

  private void wrong(Out out) {
    List<Order> orders = hearing.corrected(expander);
    orders.forEach(o -> give(o, watch.now()));
    if (orders.isEmpty()) {
      out.line("Nobody has repeated an order yet.");
    }
  }

  private void gauges(Out out) {
    List<Dial> dials = watch.sighting().dials();
    dials.forEach(d -> out.line(d.name() + " " + d.figure()));
    if (dials.isEmpty()) {
      out.line("No gauge can be read from here.");
    }
  }

  private void people(Out out) {
    List<Sighting.Seen> seen = watch.sighting().people();
    seen.forEach(s -> out.line(s.sentence()));
    if (seen.isEmpty()) {
      out.line("Nobody is in sight.");
    }
  }
}
