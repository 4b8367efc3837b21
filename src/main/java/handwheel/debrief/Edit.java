package handwheel.debrief;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * A change to the inputs of a run.
 *
 * @param removed what is left out
 * @param added what is put in
 */
record Edit(List<TimedInput> removed, List<TimedInput> added) {
  Edit {
    removed = List.copyOf(removed);
    added = List.copyOf(added);
  }

  /** Both together; the same input is put in once. */
  Edit and(Edit other) {
    return new Edit(
        Stream.concat(removed.stream(), other.removed.stream()).distinct().toList(),
        Stream.concat(added.stream(), other.added.stream()).distinct().toList());
  }

  List<TimedInput> on(List<TimedInput> inputs) {
    List<TimedInput> all = new ArrayList<>(inputs);
    removed.forEach(all::remove);
    all.addAll(added);
    return all;
  }

  boolean isNothing() {
    return removed.equals(added);
  }
}
