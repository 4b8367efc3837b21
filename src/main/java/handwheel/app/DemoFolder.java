package handwheel.app;

import handwheel.archive.KeyFile;
import handwheel.archive.Ledger;
import handwheel.archive.NameTable;
import handwheel.archive.Numbering;
import handwheel.debrief.Scored;
import handwheel.debrief.Scripts;
import handwheel.drill.Mode;
import handwheel.drill.Rehearsal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;

/**
 * A folder of synthetic runs to learn the board on. Every run is really simulated from varied
 * orders, so that each verifies; every name and help note says that it is a demonstration.
 */
final class DemoFolder {
  private static final int USUAL_RUNS = 300;
  private static final int RUNS_MAX = 10_000;
  private static final int CANDIDATES = 40;
  private static final String USUAL = "steam-leak";
  private static final String LABEL = "synthetic run for demonstration, nobody drilled";
  private static final String KEYS = "demo-keys";
  private static final String LEADER = "Demo leader";
  private static final List<String> NAMES =
      List.of("Vale", "Ferrar", "Orme", "Teal", "Marsh", "Quill", "Rook", "Harrow");

  private final Drills drills;
  private final Console console;

  DemoFolder(Drills drills, Console console) {
    this.drills = drills;
    this.console = console;
  }

  /** Makes the folder, which must be new: synthetic and real runs never share a ledger. */
  int make(Path folder, List<String> words) throws Usage, IOException {
    int runs = words.size() > 1 ? count(words.get(1)) : USUAL_RUNS;
    if (Files.exists(folder)) {
      throw new Usage(
          "`" + folder + "` is there already; `board --records NEW-FOLDER demo [RUNS]`.");
    }
    Files.createDirectories(folder);
    Files.writeString(
        folder.resolve("DEMO.txt"), "DRILL. Every record in this folder is a " + LABEL + ".\n");
    KeyFile key = KeyFile.make(folder.resolve(KEYS), LEADER);
    List<Scripts.Found> found = found();
    Instant first =
        Instant.now().truncatedTo(ChronoUnit.DAYS).minus(runs / 3 + 1L, ChronoUnit.DAYS);
    for (int i = 0; i < runs; i++) {
      run(folder, found.get(i % found.size()), key, new Slot(i, first));
    }
    nameQualifier(folder);
    console.result(runs + " synthetic runs in `" + folder + "`. Now: board --records " + folder);
    console.result(
        "To mark and decide there add: --keys "
            + folder.resolve(KEYS)
            + " --me \"Demo qualifier\" (demonstration keys lie in that folder; a real one never"
            + " does).");
    return Exit.YES;
  }

  private static void nameQualifier(Path folder) throws Usage, IOException {
    KeyFile key = KeyFile.make(folder.resolve(KEYS), "Demo qualifier");
    String of = new NameTable(folder).pseudonym("Demo qualifier");
    Seat leader = new Seat(folder, folder.resolve(KEYS), Optional.of(LEADER));
    leader.write(
        "named", of, "key", key.signer().publicHex(), "scope", "any", "until", "2099-12-31");
  }

  private record Slot(int number, Instant first) {
    String started() {
      long day = number / 3;
      long minutes = day * 1440 + number % 3 * 40L + 480;
      return first.plus(minutes, ChronoUnit.MINUTES).toString();
    }
  }

  /** One drill, so that its runs are enough to be counted; any if that one is not here. */
  private List<Scripts.Found> found() throws Usage, IOException {
    java.util.ArrayList<Scripts.Found> all = new java.util.ArrayList<>();
    for (String name : drills.scripts()) {
      drills.load(drills.file(name)).found().ifPresent(all::add);
    }
    if (all.isEmpty()) {
      throw new Usage("there is no drill to run.");
    }
    List<Scripts.Found> one = all.stream().filter(f -> f.casualty().id().equals(USUAL)).toList();
    return one.isEmpty() ? all : one;
  }

  private void run(Path folder, Scripts.Found found, KeyFile key, Slot slot) throws IOException {
    int n = slot.number();
    long seed = 1L + n % 97;
    Mode mode = n % 5 == 4 ? Mode.PRACTICE : Mode.SCORED;
    Rehearsal.Setup setup = new Rehearsal.Setup(found.ship(), found.casualty(), seed, mode);
    Ledger ledger = new Ledger(folder);
    Numbering numbering = ledger.start(found.casualty().id(), seed);
    try (Records records =
        Records.beginForcedAtEnd(folder, ledger, numbering, who(folder, key, n), slot.started())) {
      Scored.play(setup, new VariedWitness(found, n), records, session -> {});
      records.end("over");
      console.trouble(records.trouble());
    }
  }

  private static Who who(Path folder, KeyFile key, int n) throws IOException {
    NameTable names = new NameTable(folder);
    int c = n * 7 % CANDIDATES;
    String trainee = names.pseudonym("Demo " + NAMES.get(c % NAMES.size()) + " " + (c + 1));
    boolean isSelfRun = n % 11 == 10;
    String attests = isSelfRun ? "" : names.pseudonym("Demo trainer");
    return new Who(trainee, trainee, attests, LABEL, Optional.of(key.signer()));
  }

  private static int count(String text) throws Usage {
    if (text.matches("\\d{1,5}") && Integer.parseInt(text) <= RUNS_MAX && !text.equals("0")) {
      return Integer.parseInt(text);
    }
    throw new Usage("`" + text + "`: a number of runs from 1 to " + RUNS_MAX + " is needed.");
  }
}
