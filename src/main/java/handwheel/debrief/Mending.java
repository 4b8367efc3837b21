package handwheel.debrief;

import handwheel.casualty.Casualty;
import handwheel.casualty.Step;
import handwheel.casualty.StepTest;
import handwheel.casualty.Window;
import handwheel.drill.Input;
import handwheel.logbook.Entry;
import handwheel.scoring.Charge;
import handwheel.scoring.ErrorClass;
import handwheel.scoring.StepResult;
import handwheel.ship.Order;
import handwheel.ship.OrderText;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * How one mistake would be mended. What was late is moved up, what came before its proof is moved
 * behind it, what is missing or was done at a wrong place is put in as the witness says it.
 */
final class Mending {
  /** An act that follows on another comes a second after it. */
  private static final long AFTER_TICKS = 20;

  private final Casualty casualty;
  private final OrderText reader;
  private final WitnessActs witness;

  Mending(Casualty casualty, OrderText reader, Played witness) {
    this.casualty = casualty;
    this.reader = reader;
    this.witness = new WitnessActs(witness, reader);
  }

  /** Returns the ways to mend a charge, the nearest to what was done first; often one. */
  List<Edit> ways(Charge charge, Played run) {
    if (charge.type() == ErrorClass.HARM || charge.type() == ErrorClass.NO_FAULT) {
      return List.of();
    }
    Optional<Step> step =
        casualty.step(charge.step()).filter(s -> s.grade().spot().equals(charge.spot()));
    List<Edit> all = new ArrayList<>();
    if (step.isPresent()) {
      moved(step.get(), charge, run).ifPresent(all::add);
      boolean isPlace =
          charge.type() == ErrorClass.WRONG_PLACE || charge.type() == ErrorClass.UNSAFE;
      if (isPlace) {
        all.add(replaced(step.get(), charge, run, firstTick(step.get(), run)));
      }
      all.add(replaced(step.get(), charge, run, 0));
    } else {
      unbroken(charge, run).ifPresent(all::add);
    }
    return all.stream().filter(e -> !e.isNothing()).toList();
  }

  /** The same orders at another time; only where the time was what was wrong. */
  private Optional<Edit> moved(Step step, Charge charge, Played run) {
    StepResult was = run.step(step.id()).orElseThrow();
    List<TimedInput> own = said(was.orders(), run);
    if (own.isEmpty()) {
      return Optional.empty();
    }
    long first = own.get(0).tick();
    long by =
        switch (charge.type()) {
          case LATE -> -Math.min(lateTicks(step, was, run), first - notBefore(step, run));
          case EARLY -> notBefore(step, run) - first;
          case OUT_OF_ORDER -> notAfter(step, run) - was.instantTick();
          case OMITTED,
              WRONG_FITTING,
              WRONG_WAY,
              WRONG_PLACE,
              PARTIAL,
              UNSAFE,
              NOT_REPORTED,
              NOT_CONFIRMED,
              HARM,
              NO_FAULT ->
              0;
        };
    List<TimedInput> then = own.stream().map(i -> i.at(i.tick() + by)).toList();
    return by == 0 ? Optional.empty() : Optional.of(new Edit(own, then));
  }

  /** The witness's orders in the place of what was said, not before what must come first. */
  private Edit replaced(Step step, Charge charge, Played run, long fromTick) {
    List<TimedInput> own = new ArrayList<>(said(run.step(step.id()).orElseThrow().orders(), run));
    if (charge.type() == ErrorClass.WRONG_WAY && step.test() instanceof StepTest.FittingIs f) {
      own.addAll(working(f.fittings(), run));
    }
    long earliest = Math.max(notBefore(step, run), fromTick);
    return new Edit(own, witness.of(step.id(), earliest, run));
  }

  /** When the first of the step's own orders was said. */
  private long firstTick(Step step, Played run) {
    List<TimedInput> own = said(run.step(step.id()).orElseThrow().orders(), run);
    return own.isEmpty() ? 0 : own.get(0).tick();
  }

  /** The forbidden order left out; an act of the response comes back as the witness does it. */
  private Optional<Edit> unbroken(Charge charge, Played run) {
    Optional<Entry.Broke> broke =
        run.entries().stream()
            .filter(e -> e instanceof Entry.Broke b && b.never().equals(charge.step()))
            .map(Entry.Broke.class::cast)
            .findFirst();
    return broke.filter(b -> b.n() > 0).map(b -> unbroken(b.n(), run));
  }

  private Edit unbroken(int n, Played run) {
    Edit edit = new Edit(said(List.of(n), run), List.of());
    for (Step step : casualty.response()) {
      if (run.step(step.id()).filter(r -> r.orders().contains(n)).isPresent()) {
        long earliest = notBefore(step, run);
        edit = edit.and(new Edit(List.of(), witness.of(step.id(), earliest, run)));
      }
    }
    return edit;
  }

  private List<TimedInput> said(List<Integer> numbers, Played run) {
    return run.orders().stream()
        .filter(o -> numbers.contains(o.n()))
        .flatMap(o -> RecordedInputs.of(List.of(o), reader).stream())
        .toList();
  }

  private List<TimedInput> working(List<String> fittings, Played run) {
    return RecordedInputs.of(List.copyOf(run.orders()), reader).stream()
        .filter(i -> i.input() instanceof Input.Said s && works(s.order(), fittings))
        .toList();
  }

  private static boolean works(Order order, List<String> fittings) {
    return order instanceof Order.Work w && w.fittings().stream().anyMatch(fittings::contains);
  }

  private static long lateTicks(Step step, StepResult was, Played run) {
    long begun = step.within().map(w -> over(w, was.begunTick(), run)).orElse(0L);
    long done = step.done().map(w -> over(w, was.completeTick(), run)).orElse(0L);
    return Math.max(begun, done);
  }

  private static long over(Window window, long tick, Played run) {
    OptionalLong cue = run.startTick(window);
    return cue.isPresent() ? Math.max(0, tick - cue.getAsLong() - window.ticks()) : 0;
  }

  /** A second after the last of the steps that must come first and were done. */
  private static long notBefore(Step step, Played run) {
    return step.after().keySet().stream()
        .flatMap(id -> run.step(id).stream())
        .filter(StepResult::isDone)
        .mapToLong(r -> r.instantTick() + AFTER_TICKS)
        .max()
        .orElse(0);
  }

  /** A second before the first of the steps that must come later and were done. */
  private long notAfter(Step step, Played run) {
    return casualty.response().stream()
        .filter(s -> s.after().containsKey(step.id()))
        .flatMap(s -> run.step(s.id()).stream())
        .filter(StepResult::isDone)
        .min(Comparator.comparingLong(StepResult::instantTick))
        .map(r -> r.instantTick() - AFTER_TICKS)
        .orElse(run.step(step.id()).orElseThrow().instantTick());
  }
}
