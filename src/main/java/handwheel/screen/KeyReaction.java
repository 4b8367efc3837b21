package handwheel.screen;

import handwheel.drill.Input;

/**
 * How the face reacts to a key, whatever it shows.
 *
 * @param ground what does not change
 * @param state the state before
 */
record KeyReaction(Ground ground, State state) {
  static final String ENDED = "ended at the terminal";

  private static final String ASK = "Ctrl-C again ends the drill; it is scored as it stands.";
  private static final int STOP = 2;
  private static final int LEAVE = 3;

  Next to(Key key) {
    State counted = state.bangs(key.is('!') ? state.bangs() + 1 : 0);
    if (counted.bangs() >= LEAVE || (state.stage() == Stage.STOPPED && key.is('!'))) {
      return Next.with(counted, new Deed.Leave(true));
    }
    KeyReaction next = new KeyReaction(ground, counted);
    if (key.kind() == Key.Kind.INTERRUPT) {
      return next.interrupted();
    }
    boolean isStop = counted.bangs() == STOP || key.kind() == Key.Kind.SUSPEND;
    return counted.isRunning() && isStop ? next.stopped("") : next.onStage(key);
  }

  private Next onStage(Key key) {
    return switch (state.stage()) {
      case CAUTION, BRIEF, OVER -> new PageReaction(ground, state).to(key);
      case RUNNING -> new OrderReaction(ground, state).to(key);
      case HELP -> help(key);
      case STOPPED, FROZEN -> key.kind() == Key.Kind.ENTER ? resumed() : Next.only(state);
    };
  }

  private Next interrupted() {
    boolean isStill = state.stage() == Stage.STOPPED || state.stage() == Stage.FROZEN;
    if (!isStill && !state.isRunning()) {
      return Next.with(state, new Deed.Leave(false));
    }
    if (state.isAsking()) {
      return Next.with(state, new Deed.Offer(new Input.Ended(ENDED)));
    }
    State shown = state.stage() == Stage.HELP ? state.at(Stage.RUNNING) : state;
    return Next.only(shown.asking(ASK));
  }

  /** Stops the drill: what was being typed is gone, and the screen is blanked. */
  Next stopped(String why) {
    State stopped = state.line(state.line().cleared()).at(Stage.STOPPED).noting(why);
    return Next.with(stopped, new Deed.Offer(new Input.Stopped()));
  }

  private Next resumed() {
    return Next.with(state.at(Stage.RUNNING), new Deed.Offer(new Input.Resumed()));
  }

  /** A key that could begin an order is not lost on the help page. */
  private Next help(Key key) {
    State back = state.at(Stage.RUNNING);
    boolean isOrder = key.kind() == Key.Kind.LETTER && !key.is(' ') && !key.is('?');
    return isOrder ? new OrderReaction(ground, back).to(key) : Next.only(back);
  }
}
