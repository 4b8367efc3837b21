package handwheel.app;

import handwheel.debrief.Scripts;
import handwheel.drill.Mode;
import handwheel.drill.Player;
import handwheel.drill.Rehearsal;
import handwheel.proof.WitnessPlayer;
import handwheel.screen.Script;
import handwheel.terminal.Conditions;
import handwheel.terminal.Letters;
import handwheel.terminal.Shutdown;
import java.io.IOException;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** {@code drill SCRIPT}: runs a drill in this terminal. */
final class DrillCommand implements Command {
  private static final List<String> WITH_VALUE =
      List.of(
          "--mode",
          "--seed",
          "--trainee",
          "--keyed",
          "--attests",
          "--coached",
          "--key",
          "--pace",
          "--records");
  private static final List<String> ALONE = List.of("--lines", "--ascii", "--sealed");
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
    return "SCRIPT|--sealed [--lines] [--ascii] [--mode learn|practice|scored] [--seed N]\n"
        + "      [--trainee NAME] [--keyed NAME] [--attests NAME] [--coached TEXT] [--key NAME]\n"
        + "      [--pace X] [--records DIR]\n"
        + "      --sealed draws the script from what is released; nobody is told what it is\n"
        + "      runs a drill; --lines for a screen reader or a small window\n"
        + "      in a pipe each line is an order, said when it comes, or `12 everyone leave`:\n"
        + "      said at second 12; time runs at the pace until the lines are at their end,\n"
        + "      then as fast as it goes; --pace 0, in a pipe: as fast as it goes throughout";
  }

  @Override
  public int run(List<String> words, Console console) throws Usage, IOException {
    Arguments args = Arguments.of(words, WITH_VALUE, ALONE);
    Path file = drills.file(args.has("--sealed") ? drawn(args) : args.only("script"));
    Drills.Loaded loaded = drills.load(file);
    if (console.stops(loaded.findings()) || loaded.found().isEmpty()) {
      return Exit.NOT_UNDERSTOOD;
    }
    long seed = args.number("--seed", Math.floorMod(Instant.now().toEpochMilli(), SEEDS));
    Mode mode = args.has("--sealed") ? Mode.SEALED : Modes.of(args, Mode.PRACTICE);
    Scripts.Found found = loaded.found().get().played(seed, mode);
    Optional<String> lack = mode.isScored() ? Proofs.lack(file, found) : Optional.empty();
    if (lack.isPresent()) {
      console.message("No scored run: " + lack.get());
      return Exit.NO;
    }
    double pace = Paces.of(args, mode, DrillFace.isAttended());
    Rehearsal.Setup setup = new Rehearsal.Setup(found.ship(), found.casualty(), seed, mode);
    Path folder = args.value("--records").map(Path::of).orElseGet(Records::usualFolder);
    Who who = Who.of(args, folder, "trainee");
    try (Shutdown shutdown = new Shutdown();
        Late record = new Late(folder, setup, who)) {
      Script script = new Script(found, seed, mode, record, guide(found));
      Conditions conditions =
          new Conditions(System::nanoTime, pace, isAscii(args.has("--ascii")), shutdown);
      DrillFace face = DrillFace.choose(script, args.has("--lines"));
      return left(face.run(conditions, console), record, console);
    }
  }

  private String drawn(Arguments args) throws Usage, IOException {
    if (!args.rest().isEmpty() || args.value("--mode").isPresent()) {
      throw new Usage("`--sealed` draws the script and is scored: name no script and no mode.");
    }
    return SealedDraw.of(drills, new SecureRandom())
        .next()
        .orElseThrow(() -> new Usage("no script is released; `list` shows what each lacks."));
  }

  private static Optional<Player> guide(Scripts.Found found) {
    return Optional.of(new WitnessPlayer(found.casualty(), found.ship()));
  }

  private static boolean isAscii(boolean isWanted) {
    String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
    return isWanted || Letters.areAsciiOnly(System.getenv(), system.startsWith("windows"));
  }

  private static int left(DrillFace.Left left, Late record, Console console) {
    left.message().ifPresent(console::message);
    if (left.watch().isEmpty()) {
      console.message("The drill was not begun.");
      return Exit.INTERRUPTED;
    }
    record.end();
    console.trouble(record.trouble());
    record.told().ifPresent(console::result);
    if (left.isInterrupted()) {
      return Exit.INTERRUPTED;
    }
    return left.watch().get().isPass() ? Exit.YES : Exit.NO;
  }
}
