package handwheel.app;

import handwheel.debrief.Scored;
import handwheel.debrief.Scripts;
import handwheel.drill.Mode;
import handwheel.drill.Player;
import handwheel.drill.Rehearsal;
import handwheel.drill.Session;
import handwheel.logbook.ChainedEntries;
import handwheel.logbook.EntrySink;
import handwheel.proof.WitnessPlayer;
import handwheel.scoring.ScoreText;
import handwheel.ship.OrderText;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** {@code rehearse SCRIPT}: plays the witness or a file of orders as fast as it goes. */
final class RehearseCommand implements Command {
  private static final List<String> WITH_VALUE =
      List.of(
          "--seed",
          "--orders",
          "--records",
          "--trace",
          "--mode",
          "--trainee",
          "--keyed",
          "--attests",
          "--coached",
          "--key");

  private final Drills drills;

  RehearseCommand(Drills drills) {
    this.drills = drills;
  }

  @Override
  public String name() {
    return "rehearse";
  }

  @Override
  public String summary() {
    return "SCRIPT [--seed N] [--orders FILE] [--json] [--timeline]\n"
        + "      [--records DIR] [--trace FILE.csv]\n"
        + "      plays the script's witness, or a file of `SECONDS ORDER` lines, without a screen";
  }

  @Override
  public int run(List<String> words, Console console) throws Usage, IOException {
    Arguments args = Arguments.of(words, WITH_VALUE, List.of("--json", "--timeline"));
    Path file = drills.file(args.only("script"));
    Drills.Loaded loaded = drills.load(file);
    if (console.stops(loaded.findings()) || loaded.found().isEmpty()) {
      return Exit.NOT_UNDERSTOOD;
    }
    long seed = args.number("--seed", 1);
    Mode mode = Modes.of(args, Mode.PRACTICE);
    Scripts.Found found = loaded.found().get().played(seed, mode);
    Rehearsal.Setup setup = new Rehearsal.Setup(found.ship(), found.casualty(), seed, mode);
    Player player = player(args, found);
    Optional<Records> records = records(args, setup);
    ChainedEntries unkept = new ChainedEntries(line -> {});
    EntrySink sink = records.isPresent() ? records.get() : unkept;
    Scored scored;
    try (PrintWriter trace = trace(args)) {
      Consumer<Session> each =
          args.value("--trace").isPresent() ? new Trace(found.ship(), trace) : session -> {};
      scored = Scored.play(setup, player, sink, each);
    }
    records.ifPresent(r -> r.end("over"));
    records.ifPresent(r -> console.trouble(r.trouble()));
    String digest = records.map(Records::digest).orElseGet(unkept::digest).orElse("");
    if (args.has("--json")) {
      console.result(ScoreJson.of(setup, scored.sheet(), records.map(Records::path), digest));
    } else if (args.has("--timeline")) {
      Timeline.lines(found, scored.entries()).forEach(console::result);
    } else {
      ScoreText.lines(found.casualty(), found.ship(), scored.entries(), scored.sheet())
          .forEach(console::result);
      records.ifPresent(r -> console.result(r.told()));
      console.result("Digest: " + digest);
    }
    return scored.sheet().isPass() ? Exit.YES : Exit.NO;
  }

  private static Optional<Records> records(Arguments args, Rehearsal.Setup setup)
      throws IOException {
    if (args.value("--records").isEmpty()) {
      return Optional.empty();
    }
    Path folder = Path.of(args.value("--records").get());
    return Optional.of(Records.begin(folder, setup, Who.of(args, folder, "witness")));
  }

  private static Player player(Arguments args, Scripts.Found found) throws Usage, IOException {
    Optional<String> orders = args.value("--orders");
    if (orders.isEmpty()) {
      return new WitnessPlayer(found.casualty(), found.ship());
    }
    OrderText reader = new OrderText(found.ship(), found.casualty().messages());
    Path path = Path.of(orders.get());
    if (!Files.isRegularFile(path)) {
      throw new Usage("there is no file `" + orders.get() + "`.");
    }
    return OrdersFile.of(orders.get(), Files.readAllLines(path), reader);
  }

  private static PrintWriter trace(Arguments args) throws IOException {
    Optional<String> file = args.value("--trace");
    return file.isPresent()
        ? new PrintWriter(Files.newBufferedWriter(Path.of(file.get())))
        : new PrintWriter(java.io.Writer.nullWriter());
  }
}
