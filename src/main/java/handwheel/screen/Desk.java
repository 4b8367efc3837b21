package handwheel.screen;

import handwheel.drill.Sight;
import handwheel.logbook.Entry;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/**
 * The full-screen face of one drill: takes keys and time, gives frames. It holds what changes
 * around the pure reaction and drawing. It never waits and never writes; whoever owns the terminal
 * does.
 */
public final class Desk implements Face {
  private final Script script;
  private final Ground ground;
  private final Painting painting;
  private final Deque<Event> events = new ArrayDeque<>();
  private State state;
  private Optional<Watch> watch = Optional.empty();
  private boolean isLeft;
  private boolean isReal;

  /**
   * Sets up the face; the cautions come first.
   *
   * @param script what the drill is made from
   */
  public Desk(Script script) {
    this.script = script;
    Expander expander = new Expander(script.ship(), script.casualty().messages());
    this.ground = new Ground(new Pages(script, expander), expander, new Hazards(script.casualty()));
    this.state = State.first(script.mode());
    this.painting = new Painting(ground);
  }

  @Override
  public void press(Key key) {
    happen(new Event.Pressed(key));
  }

  @Override
  public void pass(long ticks) {
    watch.ifPresent(w -> w.pass(ticks));
    look();
  }

  /** A running drill is stopped, and the record says so. */
  @Override
  public void stoodStill(long seconds) {
    happen(new Event.StoodStill(seconds));
  }

  /**
   * Ends a drill that is not over, if one has begun, and scores it as it stands.
   *
   * @param why short reason, for the record
   */
  public void end(String why) {
    watch.ifPresent(w -> w.end(why));
    look();
  }

  private void happen(Event event) {
    events.add(event);
    while (!events.isEmpty()) {
      Next next = Reaction.react(ground, state, events.remove());
      state = next.state();
      next.deeds().forEach(deed -> deed.accept(new Doer()));
    }
  }

  private void hear(Entry entry, String sentence) {
    events.add(new Event.Told(entry, sentence));
  }

  private void look() {
    watch.ifPresent(w -> happen(new Event.Tick(w.sighting())));
    watch.ifPresent(w -> happen(new Event.Advised(w.advice())));
    if (watch.isPresent() && watch.get().isOver() && state.stage() != Stage.OVER) {
      happen(new Event.Over(watch.get().sheet()));
    }
  }

  /** Does what a reaction asks for. */
  private final class Doer implements Deed.Visitor {
    @Override
    public void begin(Deed.Begin deed) {
      Watch begun = new Watch(script, Desk.this::hear);
      watch = Optional.of(begun);
      events.add(new Event.Tick(begun.sighting()));
    }

    @Override
    public void offer(Deed.Offer deed) {
      watch.ifPresent(w -> w.offer(deed.input()));
    }

    @Override
    public void leave(Deed.Leave deed) {
      isLeft = true;
      isReal = deed.isReal();
    }
  }

  @Override
  public Frame frame(int width, int height) {
    Size size = new Size(width, height);
    if (!size.equals(state.size())) {
      happen(new Event.Resized(size));
    }
    return painting.draw(state, size);
  }

  @Override
  public boolean isLeft() {
    return isLeft;
  }

  /**
   * Returns whether he left for a real casualty.
   *
   * @return true after the third exclamation mark
   */
  public boolean isReal() {
    return isReal;
  }

  /**
   * A key that was pressed before a caution stood there does not acknowledge it.
   *
   * @return true on cautions and the brief
   */
  @Override
  public boolean isToBeRead() {
    return state.stage() == Stage.CAUTION || state.stage() == Stage.BRIEF;
  }

  /**
   * Returns the drill.
   *
   * @return empty while the cautions are not acknowledged
   */
  public Optional<Watch> watch() {
    return watch;
  }

  /**
   * Returns what the trainee may know from where he stands.
   *
   * @return empty while the cautions are not acknowledged
   */
  Optional<Sight> sight() {
    return watch.map(Watch::sight);
  }
}
