package handwheel.screen;

import handwheel.casualty.Casualty;
import java.util.List;
import java.util.Optional;

/**
 * The full-screen face of one drill: takes keys and time, gives frames. It never waits and never
 * writes; whoever owns the terminal does.
 */
public final class Desk {
  private static final Look NOTHING = new Look("0:00", "", "", List.of(), List.of());

  private final Script script;
  private final Expander expander;
  private final Painting painting;
  private State state;
  private Optional<Watch> watch = Optional.empty();
  private boolean isLeft;

  /**
   * Sets up the face; the cautions come first.
   *
   * @param script what the drill is made from
   */
  public Desk(Script script) {
    this.script = script;
    Casualty casualty = script.casualty();
    this.expander = new Expander(script.ship(), casualty.messages());
    this.painting = new Painting(casualty, script.mode().word(), expander);
    this.state = State.first(!casualty.cautions().isEmpty());
  }

  /**
   * Takes a key.
   *
   * @param key the key
   */
  public void press(Key key) {
    long now = watch.map(Watch::now).orElse(0L);
    int cautions = script.casualty().cautions().size();
    Reaction reaction = Reaction.to(state, key, new Reaction.Around(now, cautions, expander));
    state = reaction.state();
    reaction.deeds().forEach(this::act);
  }

  private void act(Deed deed) {
    if (deed instanceof Deed.Begin) {
      watch = Optional.of(new Watch(script));
    } else if (deed instanceof Deed.Offer o) {
      watch.ifPresent(w -> w.offer(o.input()));
    } else if (deed instanceof Deed.Leave) {
      isLeft = true;
    }
  }

  /**
   * Lets time pass.
   *
   * @param ticks how many ticks at most
   */
  public void pass(long ticks) {
    watch.ifPresent(w -> w.pass(ticks));
    if (watch.isPresent() && watch.get().isOver() && state.stage() != Stage.OVER) {
      state = state.over(watch.get().sheet());
    }
  }

  /**
   * Draws the face.
   *
   * @param width columns
   * @param height rows
   * @return as many rows as fit
   */
  public Frame frame(int width, int height) {
    Look look = watch.map(Watch::look).orElse(NOTHING);
    List<String> log = watch.map(Watch::heard).orElse(List.of());
    return painting.draw(state, look, log, new Painting.Size(width, height));
  }

  /**
   * Returns whether the trainee has left.
   *
   * @return true when nothing more is to be drawn
   */
  public boolean isLeft() {
    return isLeft;
  }

  /**
   * Returns the drill.
   *
   * @return empty while the cautions are not acknowledged
   */
  public Optional<Watch> watch() {
    return watch;
  }
}
