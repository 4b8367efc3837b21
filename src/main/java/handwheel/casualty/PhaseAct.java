package handwheel.casualty;

import handwheel.plant.Port;

/** What happens when a phase is entered. */
public sealed interface PhaseAct {
  /**
   * Calls the visitor's method for this kind of act.
   *
   * @param visitor the visitor
   */
  void accept(Visitor visitor);

  /** One method for each kind of act. */
  interface Visitor {
    /**
     * Handles a leak that breaks open.
     *
     * @param act the act
     */
    void leak(Leak act);

    /**
     * Handles a cue.
     *
     * @param act the act
     */
    void cue(Cue act);

    /**
     * Handles something done outside the fire room.
     *
     * @param act the act
     */
    void outside(Outside act);
  }

  /**
   * A leak opens at a place.
   *
   * @param fault id of the leak
   * @param place id of the ship's place
   * @param port the plant's hole, m2
   * @param holeM bore of a round hole, m
   * @param rampS time to open fully, s
   */
  record Leak(String fault, String place, Port port, Amount holeM, Amount rampS)
      implements PhaseAct {
    @Override
    public void accept(Visitor visitor) {
      visitor.leak(this);
    }
  }

  /**
   * Something a person can see, hear or feel, or is told.
   *
   * @param id id of the cue
   * @param sense how it reaches people
   * @param where id of a place, of a zone, or {@code everywhere}
   * @param text what is noticed
   */
  record Cue(String id, Sense sense, String where, String text) implements PhaseAct {
    @Override
    public void accept(Visitor visitor) {
      visitor.cue(this);
    }
  }

  /**
   * Somebody outside the fire room moves a fitting.
   *
   * @param fitting id of the fitting
   * @param port what it moves
   * @param to where to, SI
   * @param overS how long it takes, s
   */
  record Outside(String fitting, Port port, double to, Amount overS) implements PhaseAct {
    @Override
    public void accept(Visitor visitor) {
      visitor.outside(this);
    }
  }

  /** How a cue reaches people. */
  enum Sense {
    /** By ear. */
    HEARD,
    /** By eye. */
    SEEN,
    /** On the skin, underfoot. */
    FELT,
    /** By word of mouth or phone. */
    TOLD
  }
}
