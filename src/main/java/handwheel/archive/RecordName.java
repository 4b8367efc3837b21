package handwheel.archive;

import java.util.Locale;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Names of record files: {@code 0041-steam-leak-7.hwr} is run 41, script steam-leak, seed 7. */
public final class RecordName {
  /** How the name of every record ends. */
  public static final String SUFFIX = ".hwr";

  private static final int SCRIPT_CHARS = 60;
  private static final Pattern NAME = Pattern.compile("([0-9]{4,9})-.*\\.hwr");

  private RecordName() {}

  /**
   * Makes a name.
   *
   * @param no number of the run
   * @param script id of the script; what is not a-z, 0-9 or a hyphen becomes a hyphen
   * @param seed seed of the run, written without sign
   * @return a file name that every system takes
   */
  public static String of(int no, String script, long seed) {
    String id = script.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9-]", "-");
    String part = id.substring(0, Math.min(id.length(), SCRIPT_CHARS));
    return String.format(Locale.ROOT, "%04d-", no)
        + part
        + "-"
        + Long.toUnsignedString(seed)
        + SUFFIX;
  }

  /**
   * Reads the number of the run.
   *
   * @param name a file name
   * @return the number, or empty if it is not the name of a record
   */
  public static OptionalInt number(String name) {
    Matcher m = NAME.matcher(name);
    return m.matches() ? OptionalInt.of(Integer.parseInt(m.group(1))) : OptionalInt.empty();
  }
}
