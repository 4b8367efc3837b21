package handwheel.screen;

import handwheel.casualty.Caution;
import handwheel.drill.Input;
import handwheel.ship.Order;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Types and gives orders.
 *
 * @param ground what does not change
 * @param state the state before, in which the drill runs
 */
record OrderReaction(Ground ground, State state) {
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
      case PAGE_DOWN -> Next.only(state.trends(state.trends().choosing(1)));
      case PAGE_UP -> Next.only(state.trends(state.trends().choosing(-1)));
      case DOWN, INTERRUPT, SUSPEND, REDRAW, OTHER -> Next.only(state);
    };
  }

  private Next typing(String text) {
    return Next.only(state.line(state.line().typing(text, state.now(), ground.expander())));
  }

  private Next letter(char letter) {
    if (!state.line().isEmpty()) {
      return typing(state.line().typed() + letter);
    }
    return switch (letter) {
      case '?' -> Next.only(state.at(Stage.HELP));
      case '=' -> Next.with(state.noting(""), new Deed.Offer(new Input.Acknowledged()));
      case 'n' -> wrong();
      case 'z' -> Next.only(state.noting(state.hearing().again()));
      case ',' -> stopThat();
      case '+' -> hint();
      case '.' -> freeze();
      case ' ' -> Next.only(state);
      default -> typing(String.valueOf(letter));
    };
  }

  private Next wrong() {
    List<Order> orders = state.hearing().corrected(ground.expander());
    if (orders.isEmpty()) {
      return Next.only(state.noting("Nobody has repeated an order yet."));
    }
    return new Next(state.noting(""), orders.stream().map(o -> said(o, state.now())).toList());
  }

  private Next stopThat() {
    return state
        .hearing()
        .belayed(ground.expander())
        .map(o -> Next.with(state.noting(""), said(o, state.now())))
        .orElseGet(() -> Next.only(state.noting("Nobody was told anything yet.")));
  }

  private Next tab(String typed) {
    String completed = ground.expander().completed(typed);
    if (!completed.equals(typed)) {
      return typing(completed);
    }
    List<String> offered = ground.expander().offered(typed);
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
    Aid aid = acknowledged();
    Optional<Caution> caution = ground.hazards().open(means.orders(), aid);
    if (aid.isLearn() && caution.isPresent()) {
      String id = caution.get().id();
      State shown = state.aid(aid).line(line.cautioned(id));
      return Next.only(shown.noting(Advice.between(caution.get())));
    }
    List<Deed> deeds = new ArrayList<>();
    means.orders().forEach(order -> deeds.add(said(order, first)));
    return new Next(state.aid(aid).line(line.given()), deeds);
  }

  /** A second Enter under a caution acknowledges it. */
  private Aid acknowledged() {
    String caution = state.line().caution();
    return caution.isEmpty() ? state.aid() : state.aid().acknowledging(caution);
  }

  private Next hint() {
    if (!state.aid().isFree()) {
      return Next.only(state.noting("No hints in a run that counts."));
    }
    String none = state.aid().advice().isEmpty() ? "Nothing to do now but to watch." : "";
    return Next.only(state.aid(state.aid().asked()).noting(none));
  }

  private Next freeze() {
    if (!state.aid().isFree()) {
      return Next.only(state.noting("No standing still in a run that counts. !! stops the drill."));
    }
    State still = state.at(Stage.FROZEN).noting("DRILL stands still. Enter: it goes on.");
    return Next.with(still, new Deed.Offer(new Input.Stopped()));
  }

  private static Deed said(Order order, long firstKeyTick) {
    return new Deed.Offer(new Input.Said(order, firstKeyTick));
  }
}
