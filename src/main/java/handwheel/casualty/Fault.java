package handwheel.casualty;

import handwheel.plant.Port;
import java.util.List;
import java.util.OptionalDouble;

/** Something that fails: a machine, a fitting, the gear of a fitting, or a gauge. */
public sealed interface Fault extends PhaseAct {
  /**
   * Returns the name by which the script speaks of it.
   *
   * @return lower-kebab id
   */
  String id();

  /**
   * Returns when and how it sets in.
   *
   * @return the course
   */
  Course course();

  /**
   * Calls the visitor's method for this kind of fault.
   *
   * @param visitor the visitor
   */
  void accept(Visitor visitor);

  @Override
  default void accept(PhaseAct.Visitor visitor) {
    visitor.fault(this);
  }

  /** One method for each kind of fault. */
  interface Visitor {
    /**
     * Handles a machine that fails.
     *
     * @param fault the fault
     */
    void machine(OfMachine fault);

    /**
     * Handles a fitting that fails.
     *
     * @param fault the fault
     */
    void fitting(OfFitting fault);

    /**
     * Handles gear that works a fitting from one place and fails.
     *
     * @param fault the fault
     */
    void gear(OfGear fault);

    /**
     * Handles a gauge that fails.
     *
     * @param fault the fault
     */
    void gauge(OfGauge fault);
  }

  /**
   * A machine fails. The first port's flow is the fault's flow.
   *
   * @param id lower-kebab id
   * @param kind what fails and how
   * @param aims where the plant's ports go; at least one
   * @param course when and how
   */
  record OfMachine(String id, FaultKind kind, List<Aim> aims, Course course) implements Fault {
    /**
     * Copies the list.
     *
     * @param id lower-kebab id
     * @param kind what fails and how
     * @param aims where the plant's ports go; at least one
     * @param course when and how
     */
    public OfMachine {
      aims = List.copyOf(aims);
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.machine(this);
    }
  }

  /**
   * Where a fault takes a port.
   *
   * @param port the plant's input
   * @param size how far, in the scale's unit
   * @param scale what the size means
   */
  record Aim(Port port, Amount size, Scale scale) {
    /**
     * Returns the port's position for a size.
     *
     * @param drawn the size, SI
     * @return SI position
     */
    public double position(double drawn) {
      return switch (scale) {
        case PLAIN -> drawn;
        case BORE -> StrictMath.PI / 4 * drawn * drawn;
        case REST -> 1 - drawn;
      };
    }
  }

  /** What the size of a fault means to a port. */
  enum Scale {
    /** The position itself. */
    PLAIN,
    /** Bore of a round hole, m; the position is its area. */
    BORE,
    /** Share that is lost; the position is what is left. */
    REST
  }

  /**
   * A fitting fails at every place it is worked from.
   *
   * @param id lower-kebab id
   * @param fitting id of the fitting
   * @param trouble what is wrong with it
   * @param figure stuck: the position at which it jams on its way, empty where it stands; stiff:
   *     how many times longer it takes; dead: empty
   * @param course when and how; a ramp has no meaning here
   */
  record OfFitting(
      String id, String fitting, FittingTrouble trouble, OptionalDouble figure, Course course)
      implements Fault {
    @Override
    public void accept(Visitor visitor) {
      visitor.fitting(this);
    }
  }

  /** What can be wrong with a fitting. */
  enum FittingTrouble {
    /** No hand moves it. */
    STUCK,
    /** It moves slowly. */
    STIFF,
    /** It has stopped and will not start. */
    DEAD
  }

  /**
   * The gear that works a fitting from one place turns and moves nothing.
   *
   * @param id lower-kebab id
   * @param fitting id of the fitting
   * @param place id of the place of that control
   * @param course when and how; a ramp has no meaning here
   */
  record OfGear(String id, String fitting, String place, Course course) implements Fault {
    @Override
    public void accept(Visitor visitor) {
      visitor.gear(this);
    }
  }

  /**
   * A gauge shows what is not so.
   *
   * @param id lower-kebab id
   * @param gauge id of the gauge
   * @param trouble what is wrong with it
   * @param by how far it is out at most, in the gauge's unit; 0 where it has no meaning
   * @param course when and how; over a ramp it drifts
   */
  record OfGauge(String id, String gauge, GaugeTrouble trouble, double by, Course course)
      implements Fault {
    @Override
    public void accept(Visitor visitor) {
      visitor.gauge(this);
    }
  }

  /** What can be wrong with a gauge. */
  enum GaugeTrouble {
    /** It stays where it was. */
    STUCK,
    /** It reads too high. */
    HIGH,
    /** It reads too low. */
    LOW,
    /** It stands at the top of its scale. */
    FULL,
    /** It stands at the bottom of its scale. */
    EMPTY
  }
}
