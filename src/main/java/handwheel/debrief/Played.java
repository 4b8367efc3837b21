package handwheel.debrief;

import handwheel.casualty.Window;
import handwheel.drill.Player;
import handwheel.drill.Rehearsal;
import handwheel.logbook.Entry;
import handwheel.scoring.ScoreSheet;
import handwheel.scoring.StepResult;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Predicate;

/**
 * A run simulated, scored and measured.
 *
 * @param entries every entry, the score last
 * @param sheet the score sheet
 * @param outcome what it did
 */
record Played(List<Entry> entries, ScoreSheet sheet, Outcome outcome) {
  static Played play(Rehearsal.Setup setup, Player player) {
    Meter meter = new Meter();
    Scored scored = Scored.play(setup, player, entry -> {}, meter);
    return new Played(scored.entries(), scored.sheet(), meter.outcome(scored.sheet()));
  }

  Optional<StepResult> step(String id) {
    return sheet.steps().stream().filter(s -> s.step().equals(id)).findFirst();
  }

  /** When a time began to run: its cue given, its phase entered, its step done. */
  OptionalLong startTick(Window window) {
    return switch (window.since()) {
      case CUE -> cueTick(window.of());
      case PHASE -> first(e -> e instanceof Entry.PhaseEntered p && p.id().equals(window.of()));
      case STEP ->
          step(window.of()).stream()
              .filter(StepResult::isDone)
              .mapToLong(StepResult::instantTick)
              .findFirst();
    };
  }

  /** First time a cue was given. */
  OptionalLong cueTick(String cue) {
    return first(e -> e instanceof Entry.CueGiven c && c.id().equals(cue));
  }

  private OptionalLong first(Predicate<Entry> is) {
    return entries.stream().filter(is).mapToLong(Entry::t).findFirst();
  }

  List<Entry.OrderSaid> orders() {
    return entries.stream()
        .filter(Entry.OrderSaid.class::isInstance)
        .map(Entry.OrderSaid.class::cast)
        .toList();
  }
}
