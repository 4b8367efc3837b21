package handwheel.casualty;

import handwheel.units.Unit;
import java.util.List;

/**
 * What is drawn for each run: a figure, evenly between two ends, or one of several words, each as
 * likely as the others.
 *
 * @param name lower-kebab name
 * @param fromSi lower end, SI; of words 0
 * @param toSi upper end, SI; of words their number, which is never drawn
 * @param unit the unit its author wrote
 * @param words the words; of a figure none
 */
public record Variation(String name, double fromSi, double toSi, Unit unit, List<String> words) {
  /**
   * Copies the list.
   *
   * @param name lower-kebab name
   * @param fromSi lower end, SI; of words 0
   * @param toSi upper end, SI; of words their number, which is never drawn
   * @param unit the unit its author wrote
   * @param words the words; of a figure none
   */
  public Variation {
    words = List.copyOf(words);
  }

  /**
   * Makes one that draws a figure.
   *
   * @param name lower-kebab name
   * @param fromSi lower end, SI
   * @param toSi upper end, SI
   * @param unit the unit its author wrote
   */
  public Variation(String name, double fromSi, double toSi, Unit unit) {
    this(name, fromSi, toSi, unit, List.of());
  }

  /**
   * Makes one that draws a word.
   *
   * @param name lower-kebab name
   * @param words the words, at least two
   * @return the variation
   */
  public static Variation of(String name, List<String> words) {
    return new Variation(name, 0, words.size(), Unit.ONE, words);
  }

  /**
   * Returns whether it draws a word.
   *
   * @return false for a figure
   */
  public boolean isOfWords() {
    return !words.isEmpty();
  }
}
