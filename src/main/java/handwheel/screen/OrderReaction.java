package handwheel.screen;

import handwheel.drill.Input;
import handwheel.ship.Order;
import java.util.ArrayList;
import java.util.List;

/**
 * Types and gives orders.
 *
 * @param expander reads the order line
 * @param state the state before, in which the drill runs
 */
record OrderReaction(Expander expander, State state) {
  Next to(Key key) {
    String typed = state.line().typed();
    return switch (key.kind()) {
      case LETTER -> letter(key.letter());
      case BACK -> typing(typed.isEmpty() ? "" : typed.substring(0, typed.length() - 1));
      case WORD_BACK -> typing(typed.stripTrailing().replaceFirst("\\S+$", ""));
      case ESCAPE -> typing("");
      case UP -> typing(state.line().last());
      case TAB -> tab(typed);
      case ENTER -> entered();
      case DOWN, PAGE_UP, PAGE_DOWN, INTERRUPT, SUSPEND, REDRAW, OTHER -> Next.only(state);
    };
  }

  private Next typing(String text) {
    return Next.only(state.line(state.line().typing(text, state.now(), expander)));
  }

  private Next letter(char letter) {
    if (!state.line().isEmpty()) {
      return typing(state.line().typed() + letter);
    }
    return switch (letter) {
      case '?' -> Next.only(state.at(Stage.HELP));
      case '=' -> Next.with(state.noting(""), new Deed.Offer(new Input.Acknowledged()));
      case 'n' -> wrong();
      case ' ' -> Next.only(state);
      default -> typing(String.valueOf(letter));
    };
  }

  private Next wrong() {
    List<Order> orders = state.hearing().corrected(expander);
    if (orders.isEmpty()) {
      return Next.only(state.noting("Nobody has repeated an order yet."));
    }
    return new Next(state.noting(""), orders.stream().map(o -> said(o, state.now())).toList());
  }

  private Next tab(String typed) {
    String completed = expander.completed(typed);
    if (!completed.equals(typed)) {
      return typing(completed);
    }
    List<String> offered = expander.offered(typed);
    return offered.isEmpty()
        ? Next.only(state)
        : Next.only(state.noting("Next: " + String.join(", ", offered)));
  }

  private Next entered() {
    OrderLine line = state.line();
    if (line.typed().isBlank()) {
      return Next.only(state.line(line.cleared()));
    }
    Expansion means = line.expansion();
    if (!means.isComplete()) {
      return Next.only(state.noting(means.message()));
    }
    long first = Math.min(line.firstKeyTick(), state.now());
    List<Deed> deeds = new ArrayList<>();
    means.orders().forEach(order -> deeds.add(said(order, first)));
    return new Next(state.line(line.given()), deeds);
  }

  private static Deed said(Order order, long firstKeyTick) {
    return new Deed.Offer(new Input.Said(order, firstKeyTick));
  }
}
