package handwheel.screen;

import handwheel.debrief.Sentences;
import handwheel.drill.Engine;
import handwheel.drill.Input;
import handwheel.drill.Session;
import handwheel.drill.Sight;
import handwheel.logbook.Entry;
import handwheel.scoring.ScoreSheet;
import handwheel.scoring.ScoreText;
import handwheel.scoring.Scorer;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One drill that is being run at a terminal: the session, what was heard, the score. */
public final class Watch {
  private final Script script;
  private final Sentences sentences;
  private final List<Entry> entries = new ArrayList<>();
  private final List<String> heard = new ArrayList<>();
  private final Session session;
  private Optional<ScoreSheet> sheet = Optional.empty();
  private boolean isStopped;

  /**
   * Begins the drill; the cautions must have been acknowledged.
   *
   * @param script what it is made from
   */
  public Watch(Script script) {
    this.script = script;
    this.sentences = new Sentences(script.found());
    this.session =
        Session.open(script.ship(), script.casualty(), script.seed(), script.mode(), this::note);
  }

  private void note(Entry entry) {
    entries.add(entry);
    script.record().accept(entry);
    sentences.heard(entry).ifPresent(s -> heard.add(Sentences.clock(entry.t()) + " " + s));
  }

  /**
   * Gives the session an input.
   *
   * @param input the input
   */
  public void offer(Input input) {
    if (isOver()) {
      return;
    }
    session.offer(input);
    if (input instanceof Input.Stopped) {
      isStopped = true;
    } else if (input instanceof Input.Resumed || input instanceof Input.Ended) {
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
   * Lets time pass.
   *
   * @param ticks how many ticks at most
   */
  public void pass(long ticks) {
    for (long i = 0; i < ticks && !isStopped && !isOver(); i++) {
      if (!session.tick() || session.isOver()) {
        score();
      }
    }
  }

  private void score() {
    ScoreSheet scored = Scorer.score(script.casualty(), script.ship(), entries);
    sheet = Optional.of(scored);
    entries.add(scored.toEntry());
    script.record().accept(scored.toEntry());
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
   * Returns the score sheet in lines.
   *
   * @return lines of at most 80 characters; empty before the end
   */
  public List<String> sheet() {
    return sheet
        .map(s -> ScoreText.lines(script.casualty(), script.ship(), entries, s))
        .orElse(List.of());
  }

  /**
   * Returns everything heard, seen and said so far.
   *
   * @return sentences, each with its time before it
   */
  public List<String> heard() {
    return heard;
  }

  /**
   * Returns what the trainee may know from where he stands.
   *
   * @return the sight
   */
  public Sight sight() {
    return session.sight();
  }

  Look look() {
    return Look.of(session.sight(), sentences);
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
