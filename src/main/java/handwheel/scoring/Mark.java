package handwheel.scoring;

import handwheel.casualty.Step;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * How one step was marked.
 *
 * @param index of the step in the script
 * @param step the step
 * @param base how it was done and what that cost; empty if it was not done
 * @param miss why it was not done; empty if it was
 * @param share what least blame charges it; empty if it is not named
 * @param conflicts the pairs done the wrong way round that it is in
 * @param isChargedByRule whether a broken rule charges its act already
 */
record Mark(
    int index,
    Step step,
    Optional<Base> base,
    Optional<Miss> miss,
    OptionalInt share,
    List<Conflict> conflicts,
    boolean isChargedByRule) {
  Mark {
    conflicts = List.copyOf(conflicts);
  }

  boolean isDone() {
    return base.isPresent();
  }

  boolean isDoneEarly() {
    return conflicts.stream().anyMatch(c -> c.early() == index);
  }
}
