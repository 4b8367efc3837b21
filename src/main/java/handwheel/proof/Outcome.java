package handwheel.proof;

import handwheel.casualty.Casualty;
import handwheel.drill.Draws;
import handwheel.drill.Mode;
import handwheel.drill.Rehearsal;
import handwheel.logbook.Entry;
import handwheel.scoring.Charge;
import handwheel.scoring.ScoreSheet;
import handwheel.scoring.Scorer;
import handwheel.ship.Ship;
import java.util.List;
import java.util.stream.Stream;

/**
 * What came of a trial.
 *
 * @param trial what was tried
 * @param orders every order said, in order
 * @param cueTicks when each cue was given
 * @param words every word drawn, such as {@code side=superheater}, and how drilled the crew is
 * @param sheet how it was scored
 */
public record Outcome(
    Trial trial,
    List<Entry.OrderSaid> orders,
    List<Long> cueTicks,
    List<String> words,
    ScoreSheet sheet) {
  private static final long NANO = 1_000_000_000L;
  private static final int ALL_POINTS = 100;

  /**
   * Copies the lists.
   *
   * @param trial what was tried
   * @param orders every order said, in order
   * @param cueTicks when each cue was given
   * @param words every word drawn, such as {@code side=superheater}, and how drilled the crew is
   * @param sheet how it was scored
   */
  public Outcome {
    words = List.copyOf(words);
    orders = List.copyOf(orders);
    cueTicks = List.copyOf(cueTicks);
  }

  /**
   * Plays a trial.
   *
   * @param script the script
   * @param ship its ship
   * @param trial what is tried
   * @return what came of it
   */
  public static Outcome of(Casualty script, Ship ship, Trial trial) {
    Casualty casualty = Draws.inRun(script, trial.seed());
    Rehearsal.Setup setup =
        new Rehearsal.Setup(ship, casualty, trial.seed(), Mode.PRACTICE).unkept();
    List<Entry> entries = Rehearsal.play(setup, trial.player().get(), e -> {}, s -> {});
    return new Outcome(
        trial,
        entries.stream()
            .filter(Entry.OrderSaid.class::isInstance)
            .map(Entry.OrderSaid.class::cast)
            .toList(),
        entries.stream().filter(Entry.CueGiven.class::isInstance).map(Entry::t).toList(),
        Stream.concat(
                Stream.of("crew=" + Draws.crew(casualty, trial.seed())),
                entries.stream().flatMap(e -> word(casualty, e)))
            .toList(),
        Scorer.score(casualty, ship, entries));
  }

  private static Stream<String> word(Casualty casualty, Entry entry) {
    return casualty.vary().stream()
        .filter(v -> entry instanceof Entry.Drawn d && v.isOfWords() && v.name().equals(d.name()))
        .map(v -> v.name() + "=" + v.words().get(indexOf((Entry.Drawn) entry)));
  }

  private static int indexOf(Entry.Drawn drawn) {
    return (int) (drawn.nano() / NANO);
  }

  /** Returns whether the run earned all points and passed. */
  boolean isRight() {
    return sheet.points() == ALL_POINTS && sheet.isPass();
  }

  /** Returns the time from the first cue to the last order, ticks; 0 without either. */
  long actingTicks() {
    return cueTicks.isEmpty() || orders.isEmpty()
        ? 0
        : Math.max(0, orders.get(orders.size() - 1).t() - cueTicks.get(0));
  }

  /** Returns whether anything at all was charged to a step or rule. */
  boolean isCharged(String stepOrRule) {
    return sheet.charges().stream().anyMatch(c -> c.step().equals(stepOrRule));
  }

  /** Returns the points charged to a step or rule. */
  int lost(String stepOrRule) {
    return sheet.charges().stream()
        .filter(c -> c.step().equals(stepOrRule))
        .mapToInt(Charge::points)
        .sum();
  }

  /** Returns the ids of what was charged, each once. */
  List<String> charged() {
    return sheet.charges().stream().map(Charge::step).distinct().toList();
  }
}
