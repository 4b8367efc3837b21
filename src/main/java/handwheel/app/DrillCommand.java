package handwheel.app;

import handwheel.debrief.Scripts;
import handwheel.drill.Mode;
import handwheel.drill.Rehearsal;
import handwheel.screen.Desk;
import handwheel.screen.LineDesk;
import handwheel.screen.Script;
import handwheel.screen.Watch;
import handwheel.terminal.FullScreen;
import handwheel.terminal.LineFace;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** {@code drill SCRIPT}: runs a drill in this terminal. */
final class DrillCommand implements Command {
  private static final List<String> WITH_VALUE =
      List.of("--mode", "--seed", "--trainee", "--pace", "--records");
  private static final long SEEDS = 1_000_000;

  private final Drills drills;

  DrillCommand(Drills drills) {
    this.drills = drills;
  }

  @Override
  public String name() {
    return "drill";
  }

  @Override
  public String summary() {
    return "SCRIPT [--lines] [--mode learn|practice|scored] [--seed N] [--trainee NAME]\n"
        + "      [--pace X] [--records DIR]\n"
        + "      runs a drill; in a pipe each line is an order, or SECONDS ORDER, and time flies";
  }

  @Override
  public int run(List<String> words, Console console) throws Usage, IOException {
    Arguments args = Arguments.of(words, WITH_VALUE, List.of("--lines"));
    Drills.Loaded loaded = drills.load(drills.file(args.only("script")));
    if (console.stops(loaded.findings()) || loaded.found().isEmpty()) {
      return Exit.NOT_UNDERSTOOD;
    }
    Scripts.Found found = loaded.found().get();
    long seed = args.number("--seed", Math.floorMod(Instant.now().toEpochMilli(), SEEDS));
    Mode mode = Modes.of(args, Mode.PRACTICE);
    double pace = args.decimal("--pace", 1);
    Rehearsal.Setup setup = new Rehearsal.Setup(found.ship(), found.casualty(), seed, mode);
    Path folder = args.value("--records").map(Path::of).orElseGet(Records::usualFolder);
    try (Late record = new Late(folder, setup, args.value("--trainee").orElse("trainee"))) {
      Script script = new Script(found, seed, mode, record);
      Optional<Watch> watch = face(script, args.has("--lines"), pace, console);
      return left(watch, record, console);
    }
  }

  private static Optional<Watch> face(Script script, boolean isLines, double pace, Console console)
      throws IOException {
    if (!FullScreen.isTerminal()) {
      LineDesk desk = new LineDesk(script);
      BufferedReader in =
          new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
      LineFace.piped(desk, in, console.out());
      return desk.watch();
    }
    if (isLines || !FullScreen.isPossible()) {
      LineDesk desk = new LineDesk(script);
      LineFace.typed(desk, System::nanoTime, pace);
      return desk.watch();
    }
    Desk desk = new Desk(script);
    FullScreen.run(desk, System::nanoTime, pace);
    return desk.watch();
  }

  private static int left(Optional<Watch> watch, Late record, Console console) {
    if (watch.isEmpty() || !watch.get().isOver()) {
      console.message("The drill was not finished.");
      return Exit.INTERRUPTED;
    }
    record.end();
    console.trouble(record.trouble());
    record.path().ifPresent(p -> console.result("Record: " + p));
    return watch.get().isPass() ? Exit.YES : Exit.NO;
  }
}
