package handwheel.app;

import handwheel.debrief.RecordedInputs;
import handwheel.debrief.Scripts;
import handwheel.debrief.Sentences;
import handwheel.drill.Engine;
import handwheel.drill.Mode;
import handwheel.drill.Player;
import handwheel.drill.Rehearsal;
import handwheel.drill.Session;
import handwheel.logbook.Entry;
import handwheel.ship.Gauge;
import handwheel.ship.OrderText;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** A run played again: at each moment what the trainee could see, beside what was. */
final class Replay {
  private static final double S_TO_MS = 1000;

  private final Scripts.Found found;
  private final Console console;
  private final Sentences sentences;

  Replay(Scripts.Found found, Console console) {
    this.found = found;
    this.console = console;
    this.sentences = new Sentences(found);
  }

  /** Plays it; pace 0 is as fast as it goes. */
  void play(Entry.Run run, List<Entry> entries, double pace, int everyS) {
    OrderText orders = new OrderText(found.ship(), found.casualty().messages());
    Player player = new RecordedInputs(entries, orders);
    Mode mode = Mode.ofWord(run.mode()).orElse(Mode.PRACTICE);
    Rehearsal.Setup setup = new Rehearsal.Setup(found.ship(), found.casualty(), run.seed(), mode);
    long every = (long) Math.max(1, everyS) * Engine.TICKS_PER_S;
    console.result("DRILL replay. seen: what stood before his eyes; is: what was.");
    Rehearsal.play(
        setup,
        player,
        e -> sentences.told(e).ifPresent(s -> console.result(at(e.t()) + s)),
        session -> moment(session, every, pace));
  }

  private void moment(Session session, long everyTicks, double pace) {
    if (session.now() % everyTicks == 0) {
      List<String> seen = new ArrayList<>();
      for (Gauge g : session.sight().gauges()) {
        seen.add(gauge(session, g));
      }
      String gauges =
          seen.isEmpty()
              ? "no gauge before his eyes"
              : seen.stream().collect(Collectors.joining("; "));
      console.result(at(session.now()) + "at " + session.sight().place().name() + ": " + gauges);
    }
    if (pace > 0 && session.now() % Engine.TICKS_PER_S == 0) {
      pause((long) (S_TO_MS / pace));
    }
  }

  private static String gauge(Session session, Gauge g) {
    double is = g.unit().fromSi(session.truth(g.of()));
    return String.format(
        Locale.ROOT,
        "%s seen %." + g.unit().decimals() + "f is %." + g.unit().decimals() + "f %s",
        g.name(),
        session.sight().shown(g),
        is,
        g.unit().symbol());
  }

  private static String at(long tick) {
    return Sentences.clock(tick) + "  ";
  }

  private static void pause(long ms) {
    try {
      Thread.sleep(ms);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
