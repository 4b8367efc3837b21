package handwheel.casualty;

import java.util.List;
import java.util.SortedMap;

/** A condition of a transition or a never. */
public sealed interface When {
  /**
   * Calls the visitor's method for this kind of condition.
   *
   * @param <R> what the visitor returns
   * @param visitor the visitor
   * @return what the visitor returned
   */
  <R> R accept(Visitor<R> visitor);

  /**
   * Returns how long it must hold without a break.
   *
   * @return ticks; 0 of a condition that says nothing of it
   */
  default long forTicks() {
    return 0;
  }

  /**
   * One method for each kind of condition.
   *
   * @param <R> what the methods return
   */
  interface Visitor<R> {
    /**
     * Handles a true value.
     *
     * @param when the condition
     * @return the result
     */
    R plantIs(PlantIs when);

    /**
     * Handles a gauge.
     *
     * @param when the condition
     * @return the result
     */
    R gaugeIs(GaugeIs when);

    /**
     * Handles a report.
     *
     * @param when the condition
     * @return the result
     */
    R reportPassed(ReportPassed when);

    /**
     * Handles a cue.
     *
     * @param when the condition
     * @return the result
     */
    R cueGiven(CueGiven when);

    /**
     * Handles a head count.
     *
     * @param when the condition
     * @return the result
     */
    R countDone(CountDone when);

    /**
     * Handles a word that was drawn.
     *
     * @param when the condition
     * @return the result
     */
    R drawnIs(DrawnIs when);

    /**
     * Handles several conditions together.
     *
     * @param when the condition
     * @return the result
     */
    R all(All when);
  }

  /**
   * A true value keeps a bound for a time.
   *
   * @param truth the value
   * @param bound its bound, SI
   * @param forTicks how long without a break, ticks
   */
  record PlantIs(Truth truth, Bound bound, long forTicks) implements When {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.plantIs(this);
    }
  }

  /**
   * What a gauge shows keeps a bound for a time.
   *
   * @param gauge id of the gauge
   * @param bound its bound, SI
   * @param forTicks how long without a break, ticks
   */
  record GaugeIs(String gauge, Bound bound, long forTicks) implements When {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.gaugeIs(this);
    }
  }

  /**
   * A report was passed, or not yet.
   *
   * @param message id of the report
   * @param is whether it must have been
   */
  record ReportPassed(String message, boolean is) implements When {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.reportPassed(this);
    }
  }

  /**
   * A cue was given, or not yet.
   *
   * @param cue id of the cue
   * @param is whether it must have been
   */
  record CueGiven(String cue, boolean is) implements When {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.cueGiven(this);
    }
  }

  /**
   * The watch was counted after leaving, or not yet.
   *
   * @param is whether it must have been
   */
  record CountDone(boolean is) implements When {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.countDone(this);
    }
  }

  /**
   * A word was drawn for this run.
   *
   * @param variation name of the variation
   * @param index which of its words, from 0
   */
  record DrawnIs(String variation, int index) implements When {
    /**
     * Returns whether it holds.
     *
     * @param drawn what was drawn, by name
     * @return true if this word was drawn
     */
    public boolean holds(SortedMap<String, Double> drawn) {
      Double at = drawn.get(variation);
      return at != null && at.intValue() == index;
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.drawnIs(this);
    }
  }

  /**
   * Several conditions at once.
   *
   * @param parts at least one
   */
  record All(List<When> parts) implements When {
    /**
     * Copies the list.
     *
     * @param parts at least one
     */
    public All {
      parts = List.copyOf(parts);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.all(this);
    }
  }
}
