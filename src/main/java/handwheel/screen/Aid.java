package handwheel.screen;

import handwheel.drill.Mode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What helps the trainee besides the fire room itself. In a mode that counts there is none.
 *
 * @param mode how the drill is run
 * @param advice what to say now
 * @param isAsked whether a hint was asked for
 * @param acknowledged ids of the cautions that were acknowledged before an order
 */
record Aid(Mode mode, Optional<Advice> advice, boolean isAsked, List<String> acknowledged) {
  Aid {
    acknowledged = List.copyOf(acknowledged);
  }

  static Aid in(Mode mode) {
    return new Aid(mode, Optional.empty(), false, List.of());
  }

  boolean isLearn() {
    return mode == Mode.LEARN;
  }

  /** Returns whether he may ask for a hint and let the drill stand still in sight. */
  boolean isFree() {
    return !mode.isScored();
  }

  /** Returns what is shown: in learn mode always, in practice when it was asked for. */
  Optional<Advice> shown() {
    return isLearn() || isAsked ? advice.map(a -> a.without(acknowledged)) : Optional.empty();
  }

  Aid with(Optional<Advice> next) {
    return new Aid(mode, next, isAsked && next.equals(advice), acknowledged);
  }

  Aid asked() {
    return new Aid(mode, advice, true, acknowledged);
  }

  Aid acknowledging(String caution) {
    List<String> all = new ArrayList<>(acknowledged);
    all.add(caution);
    return new Aid(mode, advice, isAsked, all);
  }
}
