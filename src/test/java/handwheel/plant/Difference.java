package handwheel.plant;

import java.util.Locale;

/**
 * Where the program is not what was published, and is known not to be.
 *
 * @param name what is compared, with its unit
 * @param published the figure and where it is from
 * @param found the program's figure
 * @param why why it is left so
 */
public record Difference(String name, String published, double found, String why) {
  /** Returns a line of the page of checks. */
  public String row() {
    return String.format(Locale.ROOT, "| %s | %s | %.3g | %s |", name, published, found, why)
        + "\n";
  }
}
