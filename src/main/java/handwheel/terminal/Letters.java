package handwheel.terminal;

import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What characters a terminal can be trusted with, by what its surroundings say. */
public final class Letters {
  private static final List<String> LOCALE = List.of("LC_ALL", "LC_CTYPE", "LANG");
  private static final List<String> PLAIN_TERMINALS = List.of("dumb", "linux", "vt100");

  private Letters() {}

  /**
   * Returns whether only ASCII is sure to be shown: the first locale variable that is set does not
   * say UTF-8, none is set, or the terminal's type is known for a small set of characters.
   *
   * @param environment names and values
   * @param isWindows whether the locale is not told by variables
   * @return true if other characters may come out wrong
   */
  public static boolean areAsciiOnly(Map<String, String> environment, boolean isWindows) {
    if (PLAIN_TERMINALS.contains(environment.getOrDefault("TERM", ""))) {
      return true;
    }
    return !isWindows
        && LOCALE.stream()
            .map(name -> environment.getOrDefault(name, ""))
            .filter(value -> !value.isEmpty())
            .findFirst()
            .map(value -> value.toUpperCase(Locale.ROOT).replace("-", ""))
            .map(value -> !value.contains("UTF8"))
            .orElse(true);
  }
}
