package handwheel.app;

import handwheel.debrief.Debrief;
import handwheel.debrief.Groundwork;
import handwheel.debrief.Moment;
import handwheel.debrief.OwnLines;
import handwheel.debrief.Scripts;
import handwheel.debrief.Verification;
import handwheel.logbook.About;
import handwheel.logbook.Entry;
import handwheel.logbook.RunRecord;
import handwheel.proof.WitnessPlayer;
import handwheel.proof.WitnessText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;

/** {@code debrief RECORD}: what happened, why, what it cost, and what to do next time. */
final class DebriefCommand implements Command {
  private static final List<String> WITH_VALUE = List.of("--html", "--at", "--own");

  private static final int DAY_CHARS = 10;

  private final Drills drills;
  private final KnownScripts scripts;

  /** A record that was read: its file, its entries, its script, why it does not hold. */
  record Read(
      Path path,
      List<Entry> entries,
      Scripts.Found found,
      List<String> troubles,
      Optional<LocalDate> day) {}

  DebriefCommand(Drills drills) {
    this.drills = drills;
    this.scripts = new KnownScripts(drills);
  }

  @Override
  public String name() {
    return "debrief";
  }

  @Override
  public String summary() {
    return "RECORD [--own FILE] [--html FILE] [--json] [--at SECONDS] [--witness]\n"
        + "      what happened, why, what each mistake cost, what to do next time; first asks for\n"
        + "      the trainee's own three lines, or takes them from a file of three lines;\n"
        + "      --at 41 or --at 0:41: the 20 s around that time from the first cue again;\n"
        + "      --witness: the orders of the run as a first draft of a script's witness";
  }

  @Override
  public int run(List<String> words, Console console) throws Usage, IOException {
    Arguments args = Arguments.of(words, WITH_VALUE, List.of("--json", "--witness"));
    Path path = Path.of(args.only("record"));
    if (!Files.isRegularFile(path)) {
      throw new Usage("there is no record `" + path + "`.");
    }
    RunRecord record = new RecordAndScript(scripts).read(path);
    Optional<Double> at = Instants.of(args);
    boolean isDebrief = at.isEmpty() && !args.has("--witness");
    Optional<Groundwork> ground = isDebrief ? Optional.of(laid(record)) : Optional.empty();
    Verification verification =
        ground.map(Groundwork::verification).orElseGet(() -> Verification.of(record, scripts));
    if (!args.has("--json")) {
      verification.troubles().forEach(t -> console.result("THIS RECORD DOES NOT HOLD: " + t));
    }
    if (record.entries().isEmpty()) {
      record.problems().forEach(p -> console.message(path + ": " + p.text()));
      return Exit.NOT_UNDERSTOOD;
    }
    Scripts.Found found = found((Entry.Run) record.entries().get(0));
    if (args.has("--witness")) {
      WitnessText.of(record.entries()).forEach(console::result);
    } else if (at.isPresent()) {
      Moment.around(record.entries(), found, at.get()).forEach(console::result);
    } else if (ground.isPresent()) {
      Read read = new Read(path, record.entries(), found, verification.troubles(), day(record));
      tell(args, debrief(args, read, ground.get(), console), console);
    }
    return verification.holds() ? Exit.YES : Exit.NO;
  }

  private Groundwork laid(RunRecord record) {
    return Groundwork.of(
        record, scripts, f -> new WitnessPlayer(f.casualty(), f.ship()), new Cores());
  }

  /** The day on which the run was begun, as its record says. */
  private static Optional<LocalDate> day(RunRecord record) {
    try {
      return record
          .about()
          .map(About::started)
          .filter(s -> s.length() >= DAY_CHARS)
          .map(s -> LocalDate.parse(s.substring(0, DAY_CHARS)));
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }

  private Scripts.Found found(Entry.Run run) throws Usage {
    Optional<Scripts.Found> found = scripts.find(run);
    if (found.isEmpty()) {
      throw new Usage("script `" + run.script() + "` of ship `" + run.ship() + "` is not here.");
    }
    return found.get();
  }

  private Debrief debrief(Arguments args, Read read, Groundwork ground, Console console)
      throws Usage, IOException {
    Optional<OwnLines> own =
        new OwnFile(read.path()).find(args.value("--own"), args.has("--json"), console);
    Debrief.Request request =
        new Debrief.Request(
            read.entries(),
            read.found(),
            read.troubles(),
            own,
            NextDrills.actions(read, drills),
            read.day());
    return Debrief.of(request, ground, new Cores());
  }

  private static void tell(Arguments args, Debrief debrief, Console console) throws IOException {
    Optional<String> html = args.value("--html");
    if (html.isPresent()) {
      Files.writeString(Path.of(html.get()), debrief.html());
    }
    if (args.has("--json")) {
      console.result(DebriefJson.of(debrief));
    } else {
      debrief.text().forEach(console::result);
      html.ifPresent(f -> console.result("HTML: " + f));
    }
  }
}
