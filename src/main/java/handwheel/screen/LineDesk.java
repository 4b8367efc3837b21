package handwheel.screen;

import handwheel.casualty.Casualty;
import handwheel.drill.Engine;
import handwheel.drill.Input;
import handwheel.ship.Gauge;
import handwheel.ship.Order;
import handwheel.ship.Watchstander;
import handwheel.units.Measure;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The line mode of one drill: the same information, orders and scores as the full screen, as text
 * that is only ever appended. Changes are said, not samples. It never waits and never writes by
 * itself.
 */
public final class LineDesk {
  private static final Pattern TIMED = Pattern.compile("(\\d{1,6}(?:\\.\\d{1,2})?)\\s+(.*)");
  private static final long BETWEEN_TICKS = Engine.ticks(2);

  private final Script script;
  private final Expander expander;
  private Optional<Watch> watch = Optional.empty();
  private int cautions;
  private int told;
  private boolean isBegun;
  private String place = "";

  /** Takes a line of text. */
  @FunctionalInterface
  public interface Out {
    /**
     * Takes a line.
     *
     * @param text one line without end of line
     */
    void line(String text);
  }

  /**
   * Sets up the face.
   *
   * @param script what the drill is made from
   */
  public LineDesk(Script script) {
    this.script = script;
    this.expander = new Expander(script.ship(), script.casualty().messages());
  }

  /**
   * Begins at a terminal: says what drill this is and the first caution.
   *
   * @param out takes the text
   */
  public void begin(Out out) {
    isBegun = true;
    say("DRILL. " + script.casualty().title() + ", " + script.mode().word() + ".", out);
    if (script.casualty().cautions().isEmpty()) {
      brief(out);
    } else {
      caution(out);
    }
  }

  private void caution(Out out) {
    String text = String.join(" ", Paper.caution(script.casualty(), cautions));
    say(text.replaceAll(" {2,}", " "), out);
  }

  private void brief(Out out) {
    Casualty c = script.casualty();
    say(c.brief(), out);
    say("Orders: who, verb, fitting; words may be cut short. Help: ?", out);
    watch = Optional.of(new Watch(script));
    hear(out);
  }

  /**
   * Takes a line typed at a terminal.
   *
   * @param line the line
   * @param out takes the text
   */
  public void typed(String line, Out out) {
    if (watch.isEmpty()) {
      cautions++;
      if (cautions < script.casualty().cautions().size()) {
        caution(out);
      } else {
        brief(out);
      }
      return;
    }
    act(watch.get(), line.strip(), out);
  }

  private void act(Watch w, String line, Out out) {
    switch (line) {
      case "" -> {}
      case "?" -> Paper.help(expander).forEach(h -> say(h, out));
      case "??" -> around(w, out);
      case "=" -> w.offer(new Input.Acknowledged());
      case "!!" -> {
        w.offer(new Input.Stopped());
        say("DRILL STOPPED. An empty line goes on.", out);
      }
      default -> order(w, line, out);
    }
    if (line.isEmpty()) {
      w.resume();
    }
  }

  private void order(Watch w, String line, Out out) {
    Expansion expansion = expander.expand(line);
    if (!expansion.isComplete()) {
      say(String.join(" + ", expansion.sentences()) + ": " + expansion.message(), out);
      return;
    }
    for (Order order : expansion.orders()) {
      w.offer(new Input.Said(order, w.now()));
    }
  }

  /** Says what can be seen from here. */
  private void around(Watch w, Out out) {
    for (Gauge g : w.sight().gauges()) {
      say(g.name() + " " + new Measure(w.sight().shown(g), g.unit()).text(), out);
    }
    for (Watchstander p : w.sight().watch()) {
      if (w.sight().sees(p.id())) {
        say(p.title() + ": " + w.sight().doing(p.id()), out);
      }
    }
  }

  /**
   * Takes a line from a pipe: an order two seconds after the one before, or {@code SECONDS ORDER}
   * at that time. The first call begins the drill; the cautions count as acknowledged.
   *
   * @param line the line; may be empty
   * @param out takes the text
   */
  public void take(String line, Out out) {
    if (!isBegun) {
      begin(out);
      while (watch.isEmpty()) {
        say("Acknowledged, since nobody is at a terminal.", out);
        typed("", out);
      }
    }
    Matcher m = TIMED.matcher(line.strip());
    boolean isTimed = m.matches();
    long now = watch.map(Watch::now).orElse(0L);
    long at = isTimed ? Engine.ticks(Double.parseDouble(m.group(1))) : now + BETWEEN_TICKS;
    String text = isTimed ? m.group(2) : line.strip();
    if (text.isEmpty() || text.startsWith("#")) {
      return;
    }
    pass(Math.max(0, at - now), out);
    typed(text, out);
  }

  /**
   * Lets time pass and says what was heard.
   *
   * @param ticks how many ticks at most
   * @param out takes the text
   */
  public void pass(long ticks, Out out) {
    for (long i = 0; i < ticks && watch.isPresent() && !isOver(); i++) {
      watch.get().pass(1);
      hear(out);
    }
  }

  private void hear(Out out) {
    Watch w = watch.orElseThrow();
    List<String> heard = w.heard();
    for (; told < heard.size(); told++) {
      say(heard.get(told), out);
    }
    String here = w.sight().place().name();
    if (!here.equals(place)) {
      place = here;
      say("You are at the " + here + ".", out);
    }
    if (w.isOver()) {
      w.sheet().forEach(line -> say(line, out));
    }
  }

  /**
   * Runs the drill to its end.
   *
   * @param out takes the text
   */
  public void finish(Out out) {
    while (!isOver()) {
      watch.ifPresent(Watch::resume);
      pass(Engine.TICKS_PER_S, out);
    }
  }

  /**
   * Ends the drill before its time; it is scored as it stands.
   *
   * @param out takes the text
   */
  public void end(Out out) {
    if (watch.isPresent() && !isOver()) {
      watch.get().offer(new Input.Ended("ended at the terminal"));
      pass(1, out);
    }
  }

  /**
   * Returns whether the drill is over and scored.
   *
   * @return true once there is a score
   */
  public boolean isOver() {
    return watch.map(Watch::isOver).orElse(false);
  }

  /**
   * Returns the drill.
   *
   * @return empty while the cautions are not acknowledged
   */
  public Optional<Watch> watch() {
    return watch;
  }

  private static void say(String text, Out out) {
    out.line(Text.harmless(text));
  }
}
