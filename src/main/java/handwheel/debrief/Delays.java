package handwheel.debrief;

import handwheel.casualty.Casualty;
import handwheel.casualty.Step;
import handwheel.casualty.Window;
import handwheel.logbook.Entry;
import handwheel.scoring.Charge;
import handwheel.scoring.ErrorClass;
import handwheel.scoring.ScoreSheet;
import handwheel.scoring.StepResult;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;

/** Splits the time of every step. */
final class Delays {
  /** What happens in the plant later than this is not put down to the act. */
  private static final long PLANT_TICKS = 100;

  private final Casualty casualty;
  private final List<Entry> entries;
  private final ScoreSheet sheet;
  private final Attempts attempts;

  Delays(Debrief debrief) {
    this.casualty = debrief.request().found().casualty();
    this.entries = debrief.run();
    this.sheet = debrief.sheet();
    this.attempts = new Attempts(entries, debrief.words());
  }

  /** Returns one for each step that has a cue which was given, in the order of the script. */
  List<Delay> all() {
    return casualty.response().stream().flatMap(s -> of(s).stream()).toList();
  }

  private Optional<Delay> of(Step step) {
    Optional<Entry.CueGiven> cue =
        step.within().or(step::done).flatMap(Window::cue).flatMap(this::cue);
    return cue.map(c -> of(step, c));
  }

  private Delay of(Step step, Entry.CueGiven cue) {
    StepResult result = result(step);
    Optional<Entry.OrderSaid> order =
        result.orders().stream().flatMap(n -> said(n).stream()).findFirst();
    if (order.isEmpty()) {
      String verdict = result.isDone() ? "done unordered" : undone(cue, step);
      return delay(step, new long[] {-1, -1, -1, -1, -1, -1}, verdict);
    }
    long[] at = moments(order.get(), cue.t());
    long[] spans = new long[6];
    for (int i = 0; i < spans.length; i++) {
      spans[i] = at[i + 1] < 0 || at[i] < 0 ? Delay.NONE : at[i + 1] - at[i];
    }
    return delay(step, spans, verdict(step, spans));
  }

  private static Delay delay(Step step, long[] s, String verdict) {
    return new Delay(step.id(), s[0], s[1], s[2], s[3], s[4], s[5], verdict);
  }

  /** Cue, last look, first key, Enter, hand on it, done, plant; -1 where there is none. */
  private long[] moments(Entry.OrderSaid order, long cueTick) {
    long looked = lookedTick(cueTick, order.from());
    long hand = first(e -> e instanceof Entry.Began b && b.n() == order.n());
    long moved = last(order.n());
    long spoken = first(e -> isAnswer(e, order.n()));
    long acted = hand >= 0 ? hand : spoken;
    long plant =
        moved < 0
            ? -1
            : first(
                e ->
                    e instanceof Entry.PlantEvent
                        && e.t() >= moved
                        && e.t() <= moved + PLANT_TICKS);
    long start = Math.min(cueTick, order.from());
    return new long[] {
      start, Math.max(start, looked), order.from(), order.t(), acted, moved, plant
    };
  }

  /** The last reading or look that came between; the cue itself where there was none. */
  private long lookedTick(long cueTick, long fromTick) {
    return entries.stream()
        .filter(e -> e instanceof Entry.Reading || e instanceof Entry.Looked)
        .mapToLong(Entry::t)
        .filter(t -> t > cueTick && t <= fromTick)
        .max()
        .orElse(cueTick);
  }

  private long last(int n) {
    return ticks(e -> e instanceof Entry.Moved m && m.n() == n).max().orElse(-1);
  }

  private static boolean isAnswer(Entry e, int n) {
    return (e instanceof Entry.Reading r && r.n() == n)
        || (e instanceof Entry.Passed p && p.n() == n)
        || (e instanceof Entry.Counted c && c.n() == n);
  }

  private long first(java.util.function.Predicate<Entry> isIt) {
    return ticks(isIt).findFirst().orElse(-1);
  }

  private LongStream ticks(java.util.function.Predicate<Entry> isIt) {
    return entries.stream().filter(isIt).mapToLong(Entry::t);
  }

  private String undone(Entry.CueGiven cue, Step step) {
    boolean isNoFault = charge(step).filter(c -> c.type() == ErrorClass.NO_FAULT).isPresent();
    if (isNoFault) {
      return "crew or gear";
    }
    if (attempts.isOrdered(step)) {
      return "ordered, not brought about";
    }
    return cue.noticed() ? "not ordered" : "could not be seen from where you stood";
  }

  private String verdict(Step step, long[] spans) {
    Optional<Charge> charge = charge(step);
    if (charge.isEmpty()) {
      return "as it should be";
    }
    return switch (charge.get().type()) {
      case LATE -> slow(spans, step);
      case NO_FAULT -> "crew or gear";
      case NOT_CONFIRMED -> "a wrong repeat-back not caught";
      case NOT_REPORTED, OMITTED, PARTIAL -> "ordered, not brought about";
      case EARLY, OUT_OF_ORDER, WRONG_FITTING, WRONG_WAY, WRONG_PLACE, UNSAFE, HARM ->
          "saw, chose wrong";
    };
  }

  /** The longest part names the delay. */
  private static String slow(long[] spans, Step step) {
    long decided = Math.max(0, spans[0]) + Math.max(0, spans[1]);
    boolean isSaidLate = step.within().filter(w -> decided > w.ticks()).isPresent();
    long crew = isSaidLate ? 0 : Math.max(0, spans[3]) + Math.max(0, spans[4]);
    if (spans[2] > Math.max(decided, crew)) {
      return "typed slow";
    }
    if (crew > decided) {
      return "crew or gear took the time";
    }
    return spans[0] > spans[1] ? "looked long" : "knew, slow to order";
  }

  private Optional<Charge> charge(Step step) {
    return sheet.charges().stream()
        .filter(c -> c.spot().equals(step.grade().spot()))
        .max(Comparator.comparingInt(Charge::points));
  }

  private StepResult result(Step step) {
    return sheet.steps().stream().filter(r -> r.step().equals(step.id())).findFirst().orElseThrow();
  }

  private Optional<Entry.OrderSaid> said(int n) {
    return entries.stream()
        .filter(e -> e instanceof Entry.OrderSaid o && o.n() == n)
        .map(Entry.OrderSaid.class::cast)
        .findFirst();
  }

  private Optional<Entry.CueGiven> cue(String id) {
    return entries.stream()
        .filter(e -> e instanceof Entry.CueGiven c && c.id().equals(id))
        .map(Entry.CueGiven.class::cast)
        .findFirst();
  }
}
