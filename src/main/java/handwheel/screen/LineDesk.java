package handwheel.screen;

import java.util.List;
import java.util.Optional;

/**
 * The line mode of one drill: the same information, orders and scores as the full screen, as text
 * that is only ever appended. Changes are said, not samples. It never waits and never writes by
 * itself.
 */
public final class LineDesk {
  private static final String READ = "Enter or ok: I have read this and keep to it.";
  private static final String ENDED = "ended at the terminal";

  private final Script script;
  private final Expander expander;
  private Optional<LineTalk> talk = Optional.empty();
  private int cautions;
  private boolean isAttended;
  private boolean isAsking;
  private boolean isLeft;
  private boolean isReal;
  private boolean isScoreTold;

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
    begin(true, out);
  }

  private void begin(boolean isSomebodyThere, Out out) {
    isAttended = isSomebodyThere;
    say("DRILL. " + script.casualty().title() + ", " + script.mode().word() + ".", out);
    caution(out);
  }

  /** Begins where nobody is at a terminal: every caution is said and counts as acknowledged. */
  void beginUnattended(Out out) {
    begin(false, out);
    while (talk.isEmpty()) {
      acknowledged(out);
    }
  }

  private void caution(Out out) {
    List<String> always = List.of(Paper.STANDING, Paper.REAL);
    List<String> lines = Paper.caution(script.casualty(), cautions);
    paper(lines.stream().filter(l -> cautions == 0 || !always.contains(l)).toList(), out);
    say(isAttended ? READ : "Counts as acknowledged: nobody is at a terminal.", out);
  }

  private void acknowledged(Out out) {
    cautions++;
    if (cautions < Paper.cautions(script.casualty())) {
      caution(out);
      return;
    }
    paper(Paper.brief(script.casualty(), script.ship(), script.mode()), out);
    say("g all gauges, who the people in sight. You have the watch.", out);
    talk = Optional.of(new LineTalk(script, expander, isAttended));
    report(out);
  }

  /**
   * Takes a line typed at a terminal, its first key pressed just now.
   *
   * @param line the line
   * @param out takes the text
   */
  public void typed(String line, Out out) {
    typed(line, now(), out);
  }

  /**
   * Takes a line typed at a terminal.
   *
   * @param line the line
   * @param firstKeyTick tick of its first key
   * @param out takes the text
   */
  public void typed(String line, long firstKeyTick, Out out) {
    isAsking = false;
    String text = line.strip();
    if (talk.isPresent()) {
      talk.get().typed(text, firstKeyTick, safe(out));
      left(talk.get().isReal());
    } else if (text.equals("!!!")) {
      left(true);
    } else if (text.isEmpty() || text.equals("ok")) {
      acknowledged(out);
    } else {
      say("First the caution. " + READ, out);
    }
  }

  private void left(boolean isForReal) {
    isReal |= isForReal;
    isLeft |= isForReal;
  }

  /**
   * Takes an interrupt: the first one asks, the second ends the drill.
   *
   * @param out takes the text
   */
  public void interrupted(Out out) {
    if (talk.isEmpty()) {
      isLeft = true;
    } else if (isAsking) {
      end(ENDED, out);
    } else {
      isAsking = true;
      say("Ctrl-C again ends the drill; it is scored as it stands.", out);
    }
  }

  /**
   * Tells that the whole program stood still for a while. A running drill is stopped, and the
   * record says so.
   *
   * @param seconds for how long
   * @param out takes the text
   */
  public void stoodStill(long seconds, Out out) {
    if (talk.isPresent() && !isOver() && !isStopped()) {
      say("The program stood still for " + seconds + " s.", out);
      talk.get().stop(safe(out));
    }
  }

  /**
   * Lets time pass and says what was heard.
   *
   * @param ticks how many ticks at most
   * @param out takes the text
   */
  public void pass(long ticks, Out out) {
    for (long i = 0; i < ticks && talk.isPresent() && !isOver() && !isLeft; i++) {
      talk.get().watch().pass(1);
      report(out);
    }
  }

  private void report(Out out) {
    talk.ifPresent(t -> t.report(safe(out)));
    if (isOver() && !isScoreTold) {
      isScoreTold = true;
      talk.orElseThrow().watch().sheet().forEach(line -> say(line, out));
    }
  }

  /**
   * Ends the drill before its time, if it is not over; it is scored as it stands.
   *
   * @param why short reason, for the record
   * @param out takes the text
   */
  public void end(String why, Out out) {
    talk.ifPresent(t -> t.watch().end(why));
    report(out);
  }

  /**
   * Leaves: a drill that has begun is ended and scored as it stands.
   *
   * @param why short reason, for the record
   * @param out takes the text
   */
  public void leave(String why, Out out) {
    isLeft = true;
    end(why, out);
  }

  /**
   * Returns the coming tick.
   *
   * @return ticks since the start; 0 while the cautions are not acknowledged
   */
  public long now() {
    return talk.map(t -> t.watch().now()).orElse(0L);
  }

  /**
   * Returns the valid words for what is being typed.
   *
   * @param typed the line so far
   * @return words
   */
  public List<String> offered(String typed) {
    return talk.isEmpty() ? List.of() : expander.offered(typed);
  }

  /**
   * Returns whether the drill is over and scored.
   *
   * @return true once there is a score
   */
  public boolean isOver() {
    return talk.map(t -> t.watch().isOver()).orElse(false);
  }

  /**
   * Returns whether the trainee has left.
   *
   * @return true when nothing more is to be taken
   */
  public boolean isLeft() {
    return isLeft;
  }

  /**
   * Returns whether he left for a real casualty.
   *
   * @return true after three exclamation marks
   */
  public boolean isReal() {
    return isReal;
  }

  /**
   * Returns the drill.
   *
   * @return empty while the cautions are not acknowledged
   */
  public Optional<Watch> watch() {
    return talk.map(LineTalk::watch);
  }

  boolean isStopped() {
    return talk.map(t -> t.watch().isStopped()).orElse(false);
  }

  private static Out safe(Out out) {
    return text -> out.line(Text.harmless(text));
  }

  private static void say(String text, Out out) {
    safe(out).line(text);
  }

  /** Says a page: no empty lines, and commas for the columns of a table. */
  private static void paper(List<String> lines, Out out) {
    lines.stream()
        .filter(line -> !line.isBlank())
        .forEach(line -> say(line.strip().replaceAll(" {2,}", ", "), out));
  }
}
