package handwheel.screen;

import handwheel.ship.Fitting;
import handwheel.ship.Ship;
import handwheel.ship.Verb;
import java.util.Optional;

/**
 * What a man is seen to be doing, in words: {@code shut main-stop} is what his job is called,
 * {@code shutting main steam stop} is what one sees.
 *
 * @param ship whose fittings have names
 */
record DoingWords(Ship ship) {
  String of(String doing) {
    int comma = doing.lastIndexOf(", ") + 1;
    String deed = doing.substring(comma).strip();
    int blank = deed.indexOf(' ');
    if (blank < 0) {
      return doing;
    }
    Optional<Verb> verb = Verb.ofWord(deed.substring(0, blank));
    Optional<String> name = ship.fitting(deed.substring(blank + 1)).map(Fitting::name);
    if (verb.isEmpty() || name.isEmpty()) {
      return doing;
    }
    String before = doing.substring(0, comma);
    return (before + " " + seen(verb.get()) + " " + name.get()).strip();
  }

  private static String seen(Verb verb) {
    return switch (verb) {
      case OPEN -> "opening";
      case SHUT -> "shutting";
      case TRIP -> "tripping";
      case RESET -> "resetting";
      case SET -> "setting";
      case START -> "starting";
      case STOP -> "stopping";
      case LIGHT -> "lighting";
      case SECURE -> "securing";
    };
  }
}
