package handwheel.app;

import handwheel.archive.RecordFile;
import handwheel.debrief.DebriefText;
import handwheel.debrief.Scripts;
import handwheel.debrief.Verification;
import handwheel.logbook.Entry;
import handwheel.logbook.RunRecord;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** {@code debrief RECORD}: the run told again, with its score. */
final class DebriefCommand implements Command {
  private final Drills drills;

  DebriefCommand(Drills drills) {
    this.drills = drills;
  }

  @Override
  public String name() {
    return "debrief";
  }

  @Override
  public String summary() {
    return "RECORD\n      score sheet and timeline of a run";
  }

  @Override
  public int run(List<String> words, Console console) throws Usage, IOException {
    String name = Arguments.of(words, List.of(), List.of()).only("record");
    Path path = Path.of(name);
    if (!Files.isRegularFile(path)) {
      throw new Usage("there is no record `" + name + "`.");
    }
    RunRecord record = RecordFile.read(path);
    if (record.entries().isEmpty()) {
      record.problems().forEach(p -> console.message(path + ": " + p.text()));
      return Exit.NOT_UNDERSTOOD;
    }
    Entry.Run run = (Entry.Run) record.entries().get(0);
    Optional<Scripts.Found> found = drills.find(run.ship(), run.script());
    if (found.isEmpty()) {
      throw new Usage("script `" + run.script() + "` of ship `" + run.ship() + "` is not here.");
    }
    Verification verification = Verification.of(record, drills);
    verification.troubles().forEach(t -> console.result("THIS RECORD DOES NOT HOLD: " + t));
    DebriefText.lines(record.entries(), found.get()).forEach(console::result);
    return verification.holds() ? Exit.YES : Exit.NO;
  }
}
