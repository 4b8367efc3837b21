package handwheel.debrief;

import handwheel.casualty.Step;
import handwheel.casualty.StepTest;
import handwheel.casualty.Window;
import handwheel.ship.Order;
import handwheel.ship.OrderResult;
import handwheel.ship.OrderText;
import handwheel.units.Measure;
import java.util.stream.Collectors;

/**
 * What a step asks for, as people say it.
 *
 * @param names what people call things
 * @param cues the words of the cues
 * @param reader reads canonical orders
 */
record StepWords(Names names, Cues cues, OrderText reader) implements StepTest.Visitor<String> {
  /** Returns the act alone. */
  String act(Step step) {
    return step.test().accept(this);
  }

  /** Returns the act with its times and its side. */
  String should(Step step) {
    StringBuilder text = new StringBuilder(Names.capital(act(step)));
    step.within().ifPresent(w -> text.append(", begun within ").append(window(w)));
    step.done().ifPresent(w -> text.append(", complete within ").append(window(w)));
    step.place().ifPresent(s -> text.append(", ").append(side(s)));
    return text + ".";
  }

  private String window(Window window) {
    String start =
        switch (window.since()) {
          case CUE -> "\"" + cue(window.of()) + "\"";
          case PHASE -> "phase `" + window.of() + "`";
          case STEP -> "step `" + window.of() + "`";
        };
    return Times.span(window.ticks()).replace(".0 s", " s") + " of " + start;
  }

  /** The first sentence of a cue, without its full stop. */
  String cue(String id) {
    String text = cues.text(id);
    int end = text.indexOf(". ");
    String first = end < 0 ? text : text.substring(0, end);
    return first.endsWith(".") ? first.substring(0, first.length() - 1) : first;
  }

  private static String side(Step.Side side) {
    return switch (side) {
      case LOCAL -> "in the fire room, while a man can stand there";
      case REMOTE -> "from outside the fire room";
    };
  }

  /** An order in words with whom it is said to, such as {@code to everyone: leave}. */
  String order(String say) {
    if (!(reader.read(say) instanceof OrderResult.Understood u)) {
      return say;
    }
    Order order = u.order();
    String to = order.accept(new Addressee(names)).strip();
    String what = order.accept(new OrderWords(names));
    return to.isEmpty() ? what : to + ": " + what;
  }

  @Override
  public String ordered(StepTest.Ordered test) {
    return "order " + order(test.order());
  }

  @Override
  public String fittingIs(StepTest.FittingIs test) {
    String all = test.fittings().stream().map(names::fitting).collect(Collectors.joining(" and "));
    return all + (test.isOpen() ? " open" : " shut");
  }

  @Override
  public String readProof(StepTest.ReadProof test) {
    String bound = Measure.ofSi(test.bound().si(), test.unit()).text();
    return names.gauge(test.gauge())
        + (test.bound().isUpper() ? " read below " : " read above ")
        + bound;
  }

  @Override
  public String reported(StepTest.Reported test) {
    return test.message().replace('-', ' ') + " passed to " + names.title(test.to());
  }

  @Override
  public String mustered(StepTest.Mustered test) {
    return "everyone counted by name";
  }
}
