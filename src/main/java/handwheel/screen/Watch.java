package handwheel.screen;

import handwheel.drill.Engine;
import handwheel.drill.Input;
import handwheel.drill.Session;
import handwheel.drill.Sight;
import handwheel.scoring.ScoreSheet;
import handwheel.scoring.ScoreText;
import handwheel.scoring.Scorer;
import java.util.List;
import java.util.Optional;

/** One drill that is being run at a terminal: the session, its entries, the score. */
public final class Watch {
  private final Script script;
  private final Ears ears;
  private final Session session;
  private final DoingWords words;
  private final Optional<Coach> coach;
  private Optional<ScoreSheet> sheet = Optional.empty();
  private boolean isStopped;

  /** Begins the drill; the cautions must have been acknowledged. */
  Watch(Script script, Ears.Listener listener) {
    this.script = script;
    this.words = new DoingWords(script.ship());
    this.coach =
        script
            .guide()
            .filter(g -> !script.mode().isScored())
            .map(g -> new Coach(script.casualty(), g));
    this.ears = new Ears(script, listener, e -> coach.ifPresent(c -> c.note(e)));
    this.session =
        Session.open(script.ship(), script.casualty(), script.seed(), script.mode(), ears);
    ears.open(session.sight());
  }

  /**
   * Gives the session an input. A stop and an end are in the record at once: nobody may be left to
   * let the next tick come.
   *
   * @param input the input
   */
  public void offer(Input input) {
    boolean isAgain = isStopped && input instanceof Input.Stopped;
    if (isOver() || isAgain) {
      return;
    }
    session.offer(input);
    if (input instanceof Input.Said said) {
      coach.ifPresent(c -> c.said(said.order()));
    }
    if (input instanceof Input.Stopped || input instanceof Input.Ended) {
      tick();
      isStopped = !isOver();
    } else if (input instanceof Input.Resumed) {
      isStopped = false;
    }
  }

  /** Goes on after a stop; does nothing otherwise. */
  public void resume() {
    if (isStopped) {
      offer(new Input.Resumed());
    }
  }

  /**
   * Ends the drill before its time, if it is not over, and scores it as it stands.
   *
   * @param why short reason, for the record
   */
  public void end(String why) {
    offer(new Input.Ended(why));
  }

  /**
   * Lets time pass; none passes while the drill is stopped.
   *
   * @param ticks how many ticks at most
   */
  public void pass(long ticks) {
    for (long i = 0; i < ticks && !isStopped && !isOver(); i++) {
      tick();
    }
  }

  private void tick() {
    if (!session.tick() || session.isOver()) {
      score();
    }
  }

  private void score() {
    ScoreSheet scored = Scorer.score(script.casualty(), script.ship(), ears.entries());
    sheet = Optional.of(scored);
    ears.accept(scored.toEntry());
  }

  /**
   * Returns whether the drill stands still.
   *
   * @return true between a stop and what follows on it
   */
  public boolean isStopped() {
    return isStopped;
  }

  /**
   * Returns whether the drill is over and scored.
   *
   * @return true once there is a score
   */
  public boolean isOver() {
    return sheet.isPresent();
  }

  /**
   * Returns whether the drill was passed.
   *
   * @return false also while it is not over
   */
  public boolean isPass() {
    return sheet.map(ScoreSheet::isPass).orElse(false);
  }

  /**
   * Returns the score in one line.
   *
   * @return such as {@code DRILL over: 38 of 100, FAIL.}; empty before the end
   */
  public Optional<String> result() {
    return sheet.map(
        s -> "DRILL over: " + s.points() + " of 100, " + (s.isPass() ? "PASS." : "FAIL."));
  }

  /**
   * Returns the score sheet in lines.
   *
   * @return lines of at most 80 characters; empty before the end
   */
  public List<String> sheet() {
    return sheet
        .map(s -> ScoreText.lines(script.casualty(), script.ship(), ears.entries(), s))
        .orElse(List.of());
  }

  /**
   * Returns what the trainee may know from where he stands.
   *
   * @return the sight
   */
  Sight sight() {
    return session.sight();
  }

  /** Returns what to say now, where that may be offered at all. */
  Optional<Advice> advice() {
    return isOver() ? Optional.empty() : coach.flatMap(c -> c.next(session.now()));
  }

  Sighting sighting() {
    return Sighting.of(session.sight(), words);
  }

  /**
   * Returns the coming tick.
   *
   * @return ticks since the start
   */
  public long now() {
    return session.now();
  }

  /**
   * Returns the time of the drill.
   *
   * @return seconds since the start
   */
  public double seconds() {
    return (double) session.now() / Engine.TICKS_PER_S;
  }
}
