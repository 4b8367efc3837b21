package handwheel.screen;

import handwheel.drill.Input;

/** What the face wants done. */
sealed interface Deed {
  void accept(Visitor visitor);

  /** One method for each kind of deed. */
  interface Visitor {
    void begin(Begin deed);

    void offer(Offer deed);

    void leave(Leave deed);
  }

  /** The cautions are acknowledged: the drill begins. */
  record Begin() implements Deed {
    @Override
    public void accept(Visitor visitor) {
      visitor.begin(this);
    }
  }

  /** The session gets an input. */
  record Offer(Input input) implements Deed {
    @Override
    public void accept(Visitor visitor) {
      visitor.offer(this);
    }
  }

  /**
   * The face is left.
   *
   * @param isReal whether a real casualty is why
   */
  record Leave(boolean isReal) implements Deed {
    @Override
    public void accept(Visitor visitor) {
      visitor.leave(this);
    }
  }
}
