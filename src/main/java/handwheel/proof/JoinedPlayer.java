package handwheel.proof;

import handwheel.drill.Input;
import handwheel.drill.Player;
import handwheel.logbook.Entry;
import java.util.ArrayList;
import java.util.List;

/**
 * Two players on one watch; the first speaks first.
 *
 * @param first who speaks first
 * @param second who speaks behind him
 */
record JoinedPlayer(Player first, Player second) implements Player {
  @Override
  public void note(Entry entry) {
    first.note(entry);
    second.note(entry);
  }

  @Override
  public List<Input> inputs(long now) {
    List<Input> inputs = new ArrayList<>(first.inputs(now));
    inputs.addAll(second.inputs(now));
    return inputs;
  }
}
