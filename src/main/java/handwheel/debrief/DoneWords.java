package handwheel.debrief;

import handwheel.plant.Port;
import handwheel.ship.Fitting;
import handwheel.ship.PortMove;
import handwheel.ship.Verb;
import java.util.List;

/**
 * What a hand has done to a fitting, as the man can say it. He tells what he did, not what came of
 * it: a pulled trip is not a shut valve, and a burner he put oil to is not yet a flame.
 */
final class DoneWords {
  private static final double WHOLE = 1000;

  private DoneWords() {}

  /** Returns what was done by a known verb; {@code milli} is the first port's position. */
  static String of(Fitting fitting, Verb verb, int milli) {
    return switch (verb) {
      case OPEN -> reached(fitting, verb, milli) ? "open" : part(milli);
      case SHUT -> reached(fitting, verb, milli) ? "shut" : part(milli);
      case TRIP -> "tripped";
      case RESET -> "reset";
      case SET -> isShare(fitting) ? part(milli) : "set";
      case START -> "started";
      case STOP -> "stopped";
      case LIGHT -> "root open, torch out";
      case SECURE -> "secured";
    };
  }

  /** Returns what an act by a man's own choice looks like: the first of its verbs that fits. */
  static String of(Fitting fitting, int milli) {
    return fitting.acts().keySet().stream()
        .filter(v -> v != Verb.LIGHT && reached(fitting, v, milli))
        .findFirst()
        .map(v -> of(fitting, v, milli))
        .orElse("set");
  }

  private static boolean reached(Fitting fitting, Verb verb, int milli) {
    List<PortMove> moves = fitting.moves(verb);
    return !moves.isEmpty()
        && moves.get(0).to().isPresent()
        && Math.round(moves.get(0).to().getAsDouble() * WHOLE) == milli;
  }

  private static boolean isShare(Fitting fitting) {
    List<PortMove> moves = fitting.moves(Verb.SET);
    return !moves.isEmpty() && moves.get(0).port().kind() == Port.Kind.FRACTION;
  }

  private static String part(int milli) {
    return "at " + Math.round(milli / 10.0) + " %";
  }
}
