package handwheel.screen;

import handwheel.drill.Input;
import java.util.ArrayList;
import java.util.List;

/**
 * What follows from a key.
 *
 * @param state the next state
 * @param deeds what is to be done, in order
 */
record Reaction(State state, List<Deed> deeds) {
  Reaction {
    deeds = List.copyOf(deeds);
  }

  static Reaction only(State state) {
    return new Reaction(state, List.of());
  }

  /**
   * Reacts to a key.
   *
   * @param state the state
   * @param key the key
   * @param around what the reaction depends on
   */
  static Reaction to(State state, Key key, Around around) {
    if (key.kind() == Key.Kind.INTERRUPT) {
      return interrupted(state);
    }
    return switch (state.stage()) {
      case CAUTION -> caution(state, key, around);
      case BRIEF ->
          key.kind() == Key.Kind.ENTER
              ? new Reaction(state.at(Stage.RUNNING, 0), List.of(new Deed.Begin()))
              : only(state);
      case RUNNING -> running(state, key, around);
      case HELP -> only(state.at(Stage.RUNNING, 0));
      case STOPPED -> stopped(state, key);
      case OVER -> over(state, key);
    };
  }

  /**
   * What a reaction depends on besides the state.
   *
   * @param now the coming tick
   * @param cautions how many cautions there are
   * @param expander reads the order line
   */
  record Around(long now, int cautions, Expander expander) {}

  private static Reaction interrupted(State state) {
    boolean isRunning = state.stage() == Stage.RUNNING || state.stage() == Stage.HELP;
    if (!isRunning) {
      return new Reaction(state, List.of(new Deed.Leave()));
    }
    if (!state.isLeaving()) {
      return only(state.at(Stage.RUNNING, 0).leaving());
    }
    return new Reaction(state, List.of(new Deed.Offer(new Input.Ended("ended at the terminal"))));
  }

  private static Reaction caution(State state, Key key, Around around) {
    if (key.kind() != Key.Kind.ENTER) {
      return only(state);
    }
    boolean isLast = state.page() + 1 >= around.cautions();
    return only(isLast ? state.at(Stage.BRIEF, 0) : state.at(Stage.CAUTION, state.page() + 1));
  }

  private static Reaction running(State state, Key key, Around around) {
    return switch (key.kind()) {
      case LETTER -> letter(state, key.letter(), around);
      case BACK -> only(state.typing(shorter(state.typed()), around.now()));
      case ESCAPE -> only(state.typing("", around.now()));
      case UP -> only(state.typing(state.last(), around.now()));
      case TAB -> only(state.typing(completed(state.typed(), around), around.now()));
      case ENTER -> entered(state, around);
      case SUSPEND -> stop(state);
      case DOWN, PAGE_UP, PAGE_DOWN, INTERRUPT, OTHER -> only(state);
    };
  }

  private static Reaction letter(State state, char letter, Around around) {
    if (state.typed().equals("!") && letter == '!') {
      return stop(state);
    }
    if (state.typed().isEmpty() && letter == '?') {
      return only(state.at(Stage.HELP, 0));
    }
    if (state.typed().isEmpty() && letter == '=') {
      return new Reaction(state, List.of(new Deed.Offer(new Input.Acknowledged())));
    }
    return only(state.typing(state.typed() + letter, around.now()));
  }

  private static Reaction stop(State state) {
    return new Reaction(state.at(Stage.STOPPED, 0), List.of(new Deed.Offer(new Input.Stopped())));
  }

  private static String shorter(String text) {
    return text.isEmpty() ? text : text.substring(0, text.length() - 1);
  }

  private static String completed(String typed, Around around) {
    List<String> sentences = around.expander().expand(typed).sentences();
    return sentences.size() == 1 && !typed.isBlank() ? sentences.get(0) + " " : typed;
  }

  private static Reaction entered(State state, Around around) {
    if (state.typed().isBlank()) {
      return only(state);
    }
    Expansion expansion = around.expander().expand(state.typed());
    if (!expansion.isComplete()) {
      return only(state.noting(expansion.message()));
    }
    List<Deed> deeds = new ArrayList<>();
    long first = Math.min(state.firstKeyTick(), around.now());
    expansion.orders().forEach(order -> deeds.add(new Deed.Offer(new Input.Said(order, first))));
    return new Reaction(state.given(state.typed()), deeds);
  }

  private static Reaction stopped(State state, Key key) {
    if (key.kind() == Key.Kind.LETTER && key.letter() == '!') {
      return new Reaction(state, List.of(new Deed.Leave()));
    }
    if (key.kind() == Key.Kind.ENTER) {
      return new Reaction(state.at(Stage.RUNNING, 0), List.of(new Deed.Offer(new Input.Resumed())));
    }
    return only(state);
  }

  private static Reaction over(State state, Key key) {
    int last = Math.max(0, state.sheet().size() - 1);
    return switch (key.kind()) {
      case ENTER, ESCAPE -> new Reaction(state, List.of(new Deed.Leave()));
      case DOWN -> only(paged(state, Math.min(last, state.page() + 1)));
      case UP -> only(paged(state, Math.max(0, state.page() - 1)));
      case PAGE_DOWN -> only(paged(state, Math.min(last, state.page() + 15)));
      case PAGE_UP -> only(paged(state, Math.max(0, state.page() - 15)));
      case LETTER, BACK, TAB, INTERRUPT, SUSPEND, OTHER -> only(state);
    };
  }

  private static State paged(State state, int page) {
    return state.at(Stage.OVER, page);
  }
}
