package handwheel.screen;

import handwheel.casualty.Caution;
import handwheel.debrief.Sentences;
import handwheel.drill.Engine;
import handwheel.drill.Input;
import handwheel.logbook.Entry;
import handwheel.ship.Order;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The talk of a drill that runs in the line mode: what is typed, and what is said in answer. */
final class LineTalk {
  private static final long MINUTE_TICKS = 60L * Engine.TICKS_PER_S;

  private final Expander expander;
  private final Watch watch;
  private final Changes changes = new Changes();
  private final List<String> heard = new ArrayList<>();
  private Hearing hearing = Hearing.NOTHING;
  private final Hazards hazards;
  private final boolean isAttended;
  private Aid aid;
  private String caution = "";
  private boolean isReal;

  LineTalk(Script script, Expander expander, boolean isAttended) {
    this.expander = expander;
    this.hazards = new Hazards(script.casualty());
    this.isAttended = isAttended;
    this.aid = Aid.in(script.mode());
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
    advise(out);
  }

  /** Says the next step whenever it is another one. */
  private void advise(Out out) {
    Optional<Advice> before = aid.shown();
    aid = aid.with(watch.advice());
    if (!aid.shown().equals(before)) {
      aid.shown().ifPresent(a -> a.lines().forEach(out::line));
    }
  }

  private void standStill(Out out) {
    if (aid.isFree()) {
      stop(out);
    } else {
      out.line("No standing still in a run that counts. !! stops the drill.");
    }
  }

  private void hint(Out out) {
    if (!aid.isFree()) {
      out.line("No hints in a run that counts.");
      return;
    }
    aid = aid.with(watch.advice()).asked();
    aid.shown()
        .map(Advice::lines)
        .orElse(List.of("Nothing to do now but to watch."))
        .forEach(out::line);
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
      case "z" -> out.line(hearing.again());
      case "," -> stopThat(out);
      case "+" -> hint(out);
      case "." -> standStill(out);
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
    if (!expansion.message().isEmpty()) {
      out.line(expansion.message());
    }
    if (!isHeldBack(line, expansion, out)) {
      expansion.orders().forEach(o -> give(o, firstKeyTick));
    }
  }

  /** Says a learner the caution that belongs before his order; the same line again gives it. */
  private boolean isHeldBack(String line, Expansion expansion, Out out) {
    String said = caution;
    caution = "";
    if (said.endsWith(" " + line)) {
      aid = aid.acknowledging(said.split(" ", 2)[0]);
    }
    Optional<Caution> open = hazards.open(expansion.orders(), aid);
    if (!isAttended || !aid.isLearn() || open.isEmpty()) {
      return false;
    }
    caution = open.get().id() + " " + line;
    out.line(Advice.between(open.get()));
    return true;
  }

  private void stopThat(Out out) {
    Optional<Order> belay = hearing.belayed(expander);
    belay.ifPresent(o -> give(o, watch.now()));
    if (belay.isEmpty()) {
      out.line("Nobody was told anything yet.");
    }
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
