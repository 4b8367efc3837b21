package handwheel.app;

import handwheel.debrief.Scripts;
import handwheel.drill.Input;
import handwheel.drill.Player;
import handwheel.logbook.Entry;
import handwheel.proof.WitnessPlayer;
import java.util.ArrayList;
import java.util.List;

/**
 * A witness who makes mistakes, the same for the same number: an order left out, or said late. It
 * plays candidates of a demonstration.
 */
final class VariedWitness implements Player {
  private static final int LATE_TICKS = 300;
  private static final int ORDERS = 9;

  private final WitnessPlayer witness;
  private final List<Input> held = new ArrayList<>();
  private final int left;
  private final int late;
  private int said;
  private long heldUntil;

  VariedWitness(Scripts.Found found, int number) {
    this.witness = new WitnessPlayer(found.casualty(), found.ship());
    this.left = number % 3 == 0 ? -1 : number * 5 % ORDERS;
    this.late = number % 4 == 0 ? -1 : number * 7 % ORDERS;
  }

  @Override
  public void note(Entry entry) {
    witness.note(entry);
  }

  @Override
  public List<Input> inputs(long now) {
    List<Input> due = new ArrayList<>();
    if (!held.isEmpty() && now >= heldUntil) {
      held.forEach(i -> due.add(at(i, now)));
      held.clear();
    }
    for (Input input : witness.inputs(now)) {
      int n = input instanceof Input.Said ? said++ : -1;
      if (n >= 0 && n == late) {
        held.add(input);
        heldUntil = now + LATE_TICKS;
      } else if (n < 0 || n != left) {
        due.add(input);
      }
    }
    return due;
  }

  private static Input at(Input input, long now) {
    return input instanceof Input.Said s ? new Input.Said(s.order(), now) : input;
  }
}
