package handwheel.ship;

import handwheel.units.Measure;
import java.util.Optional;

/**
 * What a fitting or a gauge is set to: a measure or a word, as said.
 *
 * @param text as said, such as {@code 180 psig}, {@code 60 %} or {@code clear}
 */
public record Setting(String text) {
  /**
   * Returns the setting as a measure.
   *
   * @return the measure, or empty if the setting is a word
   */
  public Optional<Measure> measure() {
    return Measure.parse(text);
  }
}
