package handwheel.debrief;

import handwheel.drill.Player;
import handwheel.drill.Rehearsal;
import handwheel.drill.Session;
import handwheel.logbook.Entry;
import handwheel.logbook.EntrySink;
import handwheel.scoring.ScoreSheet;
import handwheel.scoring.Scorer;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/**
 * A run played to its end and scored.
 *
 * @param entries every entry, the score last
 * @param sheet the score sheet
 */
public record Scored(List<Entry> entries, ScoreSheet sheet) {
  /**
   * Copies the list.
   *
   * @param entries every entry, the score last
   * @param sheet the score sheet
   */
  public Scored {
    entries = List.copyOf(entries);
  }

  /**
   * Plays a run and scores it.
   *
   * @param setup what the run is made from
   * @param player who plays it
   * @param sink takes the entries as they come, the score last
   * @param afterTick called after every tick
   * @return the scored run
   */
  public static Scored play(
      Rehearsal.Setup setup, Player player, EntrySink sink, Consumer<Session> afterTick) {
    List<Entry> entries = new ArrayList<>(Rehearsal.play(setup, player, sink, afterTick));
    ScoreSheet sheet = Scorer.score(setup.casualty(), setup.ship(), entries);
    entries.add(sheet.toEntry());
    sink.accept(sheet.toEntry());
    return new Scored(entries, sheet);
  }
}
