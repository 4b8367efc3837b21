package handwheel.app;

import handwheel.debrief.Scored;
import handwheel.debrief.Scripts;
import handwheel.drill.Mode;
import handwheel.drill.Rehearsal;
import handwheel.logbook.Entry;
import handwheel.proof.WitnessPlayer;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The witness of every drill that is shipped, as it plays with seed 1. */
final class WitnessRuns {
  static final long SEED = 1;

  private WitnessRuns() {}

  /**
   * One drill and its witness's run.
   *
   * @param found ship and script as played
   * @param run the run
   */
  record WitnessRun(Scripts.Found found, Scored run) {
    List<Entry.OrderSaid> orders() {
      return run.entries().stream()
          .filter(Entry.OrderSaid.class::isInstance)
          .map(Entry.OrderSaid.class::cast)
          .toList();
    }

    @Override
    public String toString() {
      return found.casualty().id();
    }
  }

  static Stream<WitnessRun> all() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("drills"))) {
      return files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList().stream()
          .map(WitnessRuns::of);
    }
  }

  private static WitnessRun of(Path file) {
    try {
      Scripts.Found found =
          Shipped.DRILLS.load(file).found().orElseThrow().played(SEED, Mode.PRACTICE);
      Rehearsal.Setup setup =
          new Rehearsal.Setup(found.ship(), found.casualty(), SEED, Mode.PRACTICE);
      WitnessPlayer player = new WitnessPlayer(found.casualty(), found.ship());
      return new WitnessRun(found, Scored.play(setup, player, e -> {}, s -> {}));
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }
}
