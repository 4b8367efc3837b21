package handwheel.reader;

import handwheel.ship.Verb;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Usual kinds of fittings: what each can do to its port. A setting is written as -1. */
enum FittingKind {
  /** Opens fully, shuts, or stands anywhere between. */
  VALVE(new Act(Verb.OPEN, 1), new Act(Verb.SHUT, 0), new Act(Verb.SET, -1)),
  /** Open or shut, nothing between. */
  SWITCH_VALVE(new Act(Verb.OPEN, 1), new Act(Verb.SHUT, 0)),
  /** Closes at one pull and is put back by hand. */
  TRIP(new Act(Verb.TRIP, 0), new Act(Verb.RESET, 1)),
  /** Runs or stands. */
  MACHINE(new Act(Verb.START, 1), new Act(Verb.STOP, 0)),
  /** Runs or stands, and can be stopped by a trip. */
  TRIPPED_MACHINE(new Act(Verb.START, 1), new Act(Verb.STOP, 0), new Act(Verb.TRIP, 0)),
  /** Is set to a figure. */
  SETTING(new Act(Verb.SET, -1));

  @SuppressWarnings("ImmutableEnumChecker") // made by List.of
  private final List<Act> acts;

  FittingKind(Act... acts) {
    this.acts = List.of(acts);
  }

  List<Act> acts() {
    return acts;
  }

  String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  static List<String> words() {
    return Arrays.stream(values()).map(FittingKind::word).toList();
  }

  static Optional<FittingKind> ofWord(String word) {
    return Arrays.stream(values()).filter(k -> k.word().equals(word)).findFirst();
  }

  /**
   * What a verb does.
   *
   * @param to the position it brings the port to; -1 is what was ordered
   */
  record Act(Verb verb, int to) {}
}
