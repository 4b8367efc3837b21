package handwheel.drill;

import handwheel.casualty.Casualty;
import handwheel.logbook.Entry;
import handwheel.logbook.EntrySink;
import handwheel.ship.Ship;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** Plays a run to its end as fast as it goes. */
public final class Rehearsal {
  private Rehearsal() {}

  /**
   * What a run is made from.
   *
   * @param ship the ship
   * @param casualty the script
   * @param seed seed of every draw
   * @param mode how it is run
   * @param isDigested whether the state is hashed every second; a run that nobody keeps needs none
   */
  public record Setup(Ship ship, Casualty casualty, long seed, Mode mode, boolean isDigested) {
    /**
     * Makes a setup whose state is hashed.
     *
     * @param ship the ship
     * @param casualty the script
     * @param seed seed of every draw
     * @param mode how it is run
     */
    public Setup(Ship ship, Casualty casualty, long seed, Mode mode) {
      this(ship, casualty, seed, mode, true);
    }

    /**
     * Returns the same for a run that nobody keeps.
     *
     * @return a setup whose state is not hashed; the entries are the same but for the hashes
     */
    public Setup unkept() {
      return new Setup(ship, casualty, seed, mode, false);
    }
  }

  /**
   * Plays a run.
   *
   * @param setup what it is made from
   * @param player who plays it
   * @param sink takes the entries as they come
   * @param afterTick called after every tick
   * @return every entry, without the score
   */
  public static List<Entry> play(
      Setup setup, Player player, EntrySink sink, Consumer<Session> afterTick) {
    Session.Opener opener = s -> Session.open(setup, s);
    return play(opener, player, sink, afterTick);
  }

  static List<Entry> play(
      Session.Opener opener, Player player, EntrySink sink, Consumer<Session> afterTick) {
    List<Entry> entries = new ArrayList<>();
    Session session =
        opener.open(
            entry -> {
              entries.add(entry);
              player.note(entry);
              sink.accept(entry);
            });
    do {
      player.inputs(session.now()).forEach(session::offer);
    } while (ticked(session, afterTick));
    return List.copyOf(entries);
  }

  private static boolean ticked(Session session, Consumer<Session> afterTick) {
    boolean isGoingOn = session.tick();
    if (isGoingOn) {
      afterTick.accept(session);
    }
    return isGoingOn;
  }
}
