package handwheel.screen;

/**
 * Reads pages: cautions and the brief one after another, the score sheet up and down.
 *
 * @param ground what does not change
 * @param state the state before
 */
record PageReaction(Ground ground, State state) {
  Next to(Key key) {
    if (state.size().isTooSmall()) {
      // What does not stand there has not been read.
      return Next.only(state);
    }
    Pages.Page page = ground.pages().of(state);
    int step = state.size().pageRows();
    return switch (key.kind()) {
      case ENTER -> page.hasMore(state) ? moved(page, step) : read();
      case DOWN -> moved(page, 1);
      case UP -> moved(page, -1);
      case PAGE_DOWN -> moved(page, step);
      case PAGE_UP -> moved(page, -step);
      case LETTER ->
          state.stage() == Stage.OVER && key.is('q')
              ? Next.with(state, new Deed.Leave(false))
              : Next.only(state);
      case BACK, WORD_BACK, TAB, ESCAPE, INTERRUPT, SUSPEND, REDRAW, OTHER -> Next.only(state);
    };
  }

  private Next moved(Pages.Page page, int rows) {
    int top = Math.max(0, Math.min(page.lastTop(state), state.top() + rows));
    return Next.only(state.top(top));
  }

  /** The page is read to its end. A score sheet stays: Enter may have been meant for an order. */
  private Next read() {
    return switch (state.stage()) {
      case CAUTION ->
          Next.only(
              state.page() + 1 < ground.pages().cautions()
                  ? state.page(state.page() + 1)
                  : state.at(Stage.BRIEF));
      case BRIEF -> Next.with(state.at(Stage.RUNNING), new Deed.Begin());
      case RUNNING, FROZEN, HELP, STOPPED, OVER -> Next.only(state);
    };
  }
}
