package handwheel.screen;

/**
 * How the face reacts to events. Pure: the same state and event give the same next state and deeds.
 *
 * @param ground what does not change
 * @param state the state before
 */
record Reaction(Ground ground, State state) implements Event.Visitor<Next> {
  static Next react(Ground ground, State state, Event event) {
    return event.accept(new Reaction(ground, state));
  }

  @Override
  public Next pressed(Event.Pressed event) {
    return new KeyReaction(ground, state).to(event.key());
  }

  @Override
  public Next tick(Event.Tick event) {
    return Next.only(state.sighting(event.sighting()));
  }

  @Override
  public Next told(Event.Told event) {
    return Next.only(state.hearing(state.hearing().with(event.entry(), event.sentence())));
  }

  @Override
  public Next advised(Event.Advised event) {
    return Next.only(state.aid(state.aid().with(event.advice())));
  }

  @Override
  public Next over(Event.Over event) {
    return Next.only(state.over(event.sheet()));
  }

  @Override
  public Next resized(Event.Resized event) {
    State sized = state.sized(event.size());
    boolean isLong = state.stage() != Stage.RUNNING && state.top() > 0;
    int last = isLong ? ground.pages().of(sized).lastTop(sized) : 0;
    return Next.only(sized.top(Math.min(state.top(), last)));
  }

  /** A standstill is a stop like any other: it is stamped, and nobody thinks on in secret. */
  @Override
  public Next stoodStill(Event.StoodStill event) {
    String why = "The program stood still for " + event.seconds() + " s.";
    return state.isRunning() ? new KeyReaction(ground, state).stopped(why) : Next.only(state);
  }
}
