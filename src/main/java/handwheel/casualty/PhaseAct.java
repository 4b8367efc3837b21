package handwheel.casualty;

import handwheel.plant.Port;

/** What happens when a phase is entered. */
public sealed interface PhaseAct permits Fault, PhaseAct.Mended, PhaseAct.Cue, PhaseAct.Outside {
  /**
   * Calls the visitor's method for this kind of act.
   *
   * @param visitor the visitor
   */
  void accept(Visitor visitor);

  /** One method for each kind of act. */
  interface Visitor {
    /**
     * Handles a fault that sets in.
     *
     * @param fault the fault
     */
    void fault(Fault fault);

    /**
     * Handles a fault that goes.
     *
     * @param act the act
     */
    void mended(Mended act);

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
   * A fault goes.
   *
   * @param fault id of the fault
   * @param overS how long it takes, s
   */
  record Mended(String fault, Amount overS) implements PhaseAct {
    @Override
    public void accept(Visitor visitor) {
      visitor.mended(this);
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
