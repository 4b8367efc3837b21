package handwheel.screen;

import java.util.List;
import java.util.Optional;

/** The stack as a man sees it through his periscope: a colour and how thick, no figure. */
final class Stack {
  private static final double HAZE = 0.02;
  private static final double GREY = 0.15;
  private static final double DENSE = 0.4;

  private Stack() {}

  /** Returns a few words; empty where the stack is not in sight. */
  static String words(List<Dial> dials) {
    Optional<Double> black = share(dials, "black-smoke");
    Optional<Double> white = share(dials, "white-smoke");
    if (black.isEmpty() && white.isEmpty()) {
      return "";
    }
    boolean isWhite = white.orElse(0.0) > black.orElse(0.0);
    double share = Math.max(white.orElse(0.0), black.orElse(0.0));
    return "   Stack: "
        + (share < HAZE ? "clear" : (isWhite ? "white, " : "black, ") + thick(share));
  }

  private static String thick(double share) {
    if (share < GREY) {
      return "a light haze";
    }
    return share < DENSE ? "smoking" : "dense";
  }

  private static Optional<Double> share(List<Dial> dials, String id) {
    return dials.stream().filter(d -> d.id().equals(id)).map(Dial::share).findFirst();
  }
}
