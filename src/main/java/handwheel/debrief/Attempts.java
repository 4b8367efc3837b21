package handwheel.debrief;

import handwheel.casualty.Step;
import handwheel.casualty.StepTest;
import handwheel.logbook.Entry;
import handwheel.ship.Order;
import handwheel.ship.OrderResult;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What was ordered toward a step, also where nothing came of it. */
final class Attempts {
  private static final String NO_ANSWER = "No answer.";

  private final List<Entry> run;
  private final StepWords words;
  private final Times times;

  Attempts(List<Entry> run, StepWords words) {
    this.run = List.copyOf(run);
    this.words = words;
    this.times = Times.of(run);
  }

  /** Whether an order seeks what a step asks for. */
  static boolean isFor(Order order, Step step) {
    if (step.test() instanceof StepTest.FittingIs f) {
      return order instanceof Order.Work w
          && w.fittings().stream().anyMatch(f.fittings()::contains);
    }
    if (step.test() instanceof StepTest.ReadProof p) {
      return order instanceof Order.Read r && r.gauge().equals(p.gauge());
    }
    if (step.test() instanceof StepTest.Reported p) {
      return order instanceof Order.Report r && r.message().equals(p.message());
    }
    return step.test() instanceof StepTest.Ordered o
        ? order.text().equals(o.order())
        : order instanceof Order.Muster;
  }

  /** Returns whether anything was ordered toward a step. */
  boolean isOrdered(Step step) {
    return !toward(step).isEmpty();
  }

  /** Returns what was said toward a step, or with its fitting or gauge the other way. */
  List<Entry.OrderSaid> toward(Step step) {
    return said().filter(o -> read(o).filter(order -> isFor(order, step)).isPresent()).toList();
  }

  /** Returns when something was first ordered toward a step. */
  Optional<Long> firstTick(Step step) {
    return toward(step).stream().map(Entry.OrderSaid::t).findFirst();
  }

  /** Returns whether a man who was told toward a step did not answer. */
  boolean isUnanswered(Step step) {
    return run.stream()
        .anyMatch(
            e -> e instanceof Entry.Refused r && r.why().equals(NO_ANSWER) && isFor(r.n(), step));
  }

  /** Returns the order that was said at a tick. */
  Optional<Order> order(long tick) {
    return said().filter(o -> o.t() == tick).flatMap(o -> read(o).stream()).findFirst();
  }

  /** Returns what men said who would or could not do a step, as sentences to add. */
  String refusals(Step step) {
    StringBuilder text = new StringBuilder();
    for (Entry e : run) {
      if (e instanceof Entry.Refused r && isFor(r.n(), step)) {
        text.append(" At ").append(times.at(r.t())).append(' ');
        text.append(words.names().title(r.who())).append(": ").append(r.why());
      }
    }
    return text.toString();
  }

  private boolean isFor(int n, Step step) {
    return said()
        .filter(o -> o.n() == n)
        .flatMap(o -> read(o).stream())
        .anyMatch(o -> isFor(o, step));
  }

  private Stream<Entry.OrderSaid> said() {
    return run.stream().filter(Entry.OrderSaid.class::isInstance).map(Entry.OrderSaid.class::cast);
  }

  private Optional<Order> read(Entry.OrderSaid said) {
    return words.reader().read(said.say()) instanceof OrderResult.Understood u
        ? Optional.of(u.order())
        : Optional.empty();
  }
}
