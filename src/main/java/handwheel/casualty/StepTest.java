package handwheel.casualty;

import handwheel.units.Unit;
import java.util.List;

/** What shows that a step was done. */
public sealed interface StepTest {
  /**
   * Calls the visitor's method for this kind of test.
   *
   * @param <R> what the visitor returns
   * @param visitor the visitor
   * @return what the visitor returned
   */
  <R> R accept(Visitor<R> visitor);

  /**
   * One method for each kind of test.
   *
   * @param <R> what the methods return
   */
  interface Visitor<R> {
    /**
     * Handles an order that was given.
     *
     * @param test the test
     * @return the result
     */
    R ordered(Ordered test);

    /**
     * Handles fittings brought to a state.
     *
     * @param test the test
     * @return the result
     */
    R fittingIs(FittingIs test);

    /**
     * Handles a proof read off a gauge.
     *
     * @param test the test
     * @return the result
     */
    R readProof(ReadProof test);

    /**
     * Handles a report.
     *
     * @param test the test
     * @return the result
     */
    R reported(Reported test);

    /**
     * Handles a head count.
     *
     * @param test the test
     * @return the result
     */
    R mustered(Mustered test);
  }

  /**
   * An order was given.
   *
   * @param order canonical text
   */
  record Ordered(String order) implements StepTest {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.ordered(this);
    }
  }

  /**
   * Fittings were all brought to a state.
   *
   * @param fittings ids, at least one
   * @param isOpen true: open or running; false: shut or stopped
   */
  record FittingIs(List<String> fittings, boolean isOpen) implements StepTest {
    /**
     * Copies the list.
     *
     * @param fittings ids, at least one
     * @param isOpen true: open or running; false: shut or stopped
     */
    public FittingIs {
      fittings = List.copyOf(fittings);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.fittingIs(this);
    }
  }

  /**
   * A gauge was read, or its reading heard, and it kept a bound.
   *
   * @param gauge id of the gauge
   * @param bound its bound, in SI of the unit's dimension: for psig Pa above the atmosphere
   * @param unit the gauge's unit
   */
  record ReadProof(String gauge, Bound bound, Unit unit) implements StepTest {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.readProof(this);
    }
  }

  /**
   * A report was passed.
   *
   * @param message id of the report
   * @param to station id
   */
  record Reported(String message, String to) implements StepTest {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.reported(this);
    }
  }

  /** The watch was counted by name. */
  record Mustered() implements StepTest {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.mustered(this);
    }
  }
}
