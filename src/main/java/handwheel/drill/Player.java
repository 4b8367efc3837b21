package handwheel.drill;

import handwheel.logbook.Entry;
import java.util.List;

/** Somebody who gives the inputs of a run: a witness, a file of orders, a record. */
public interface Player {
  /**
   * Takes note of an entry.
   *
   * @param entry what was just logged
   */
  void note(Entry entry);

  /**
   * Returns what he does at the coming tick.
   *
   * @param now the coming tick
   * @return inputs in their order; often none
   */
  List<Input> inputs(long now);
}
